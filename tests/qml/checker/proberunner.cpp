// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/qml/checker/proberunner.h"

#include <QJsonDocument>
#include <QProcess>

QJsonObject ProbeRunner::ask(const QString& function, const QJsonObject& input) const
{
    QProcess probe;
    probe.start(QStringLiteral(STEELYARD_PROBE), QStringList());
    probe.write(QJsonDocument(QJsonObject{{QStringLiteral("fn"), function}, {QStringLiteral("in"), input}}).toJson(QJsonDocument::Compact) + '\n');
    probe.closeWriteChannel();
    if (!probe.waitForFinished())
        return {{QStringLiteral("error"), probe.errorString()}};
    const QJsonObject answer = QJsonDocument::fromJson(probe.readAllStandardOutput()).object();
    return answer.contains(QStringLiteral("out")) ? answer.value(QStringLiteral("out")).toObject() : answer;
}
