// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/typeface.h"

#include <QFont>
#include <QFontDatabase>
#include <QGuiApplication>
#include <QImage>
#include <QPainter>

#include <dlfcn.h>

namespace typeface {

namespace {

QString family()
{
    return QStringLiteral("Steelyard Text");
}

bool load()
{
    bool all = true;
    for (const char* weight : {"Regular", "Medium", "SemiBold", "Bold"})
        all = QFontDatabase::addApplicationFont(QStringLiteral(":/steelyard/fonts/SteelyardText-%1.otf").arg(QLatin1String(weight))) >= 0 && all;
    return all;
}

void use()
{
    QGuiApplication::setFont(QFont(family()));
}

}

bool install()
{
    const bool all = load();
    use();
    return all;
}

std::future<void> listing()
{
    // Qt's list is made from this one; found by name, since only Qt links it, and only where it uses it
    return std::async(std::launch::async, [] {
        if (auto* const list = reinterpret_cast<int (*)()>(dlsym(RTLD_DEFAULT, "FcInit")))
            list();
    });
}

Coming::Coming(std::future<void> listing)
    : m_loaded(std::async(std::launch::async, [this, listed = std::move(listing)] {
          listed.wait();
          const bool all = load();
          // Qt's own list, else made by the first text
          const bool known = QFontDatabase::hasFamily(family());
          m_there = true;
          // whoever waits for events looks again
          QMetaObject::invokeMethod(qGuiApp, [] {}, Qt::QueuedConnection);
          return all && known;
      }))
{
}

bool Coming::wait()
{
    const bool all = m_loaded.get();
    use();
    return all;
}

void draw(const QFont& font)
{
    QImage nowhere(1, 1, QImage::Format_RGB32);
    QPainter painter(&nowhere);
    painter.setFont(font);
    painter.drawText(0, 0, QStringLiteral("etaoinsrhldcumpfgywbvkTA"));
}

}
