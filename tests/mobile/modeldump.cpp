// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/mobile/modeldump.h"

#include "mobile/editors/bandeditor.h"
#include "mobile/editors/bareditor.h"
#include "mobile/editors/chaineditor.h"
#include "mobile/editors/hangeditor.h"
#include "mobile/editors/markseditor.h"
#include "mobile/pages/kitview.h"
#include "mobile/pages/setupview.h"
#include "tests/tour/seasonfile.h"

#include <QAbstractListModel>
#include <QJsonArray>
#include <QMetaProperty>

#include <cmath>

namespace {

QJsonValue toJson(const QVariant& value);
QJsonObject dump(const QObject& object);

QJsonValue number(double value)
{
    return std::isfinite(value) ? QJsonValue(QString::number(value, 'g', 9).toDouble()) : QJsonValue();
}

QJsonArray points(const QList<QPointF>& line)
{
    constexpr qsizetype most = 5;
    QJsonArray array;
    const qsizetype count = std::min(most, line.size());
    for (qsizetype i = 0; i < count; ++i) {
        const QPointF& p = line[count < 2 ? 0 : i * (line.size() - 1) / (count - 1)];
        array.append(QJsonArray{number(p.x()), number(p.y())});
    }
    return array;
}

QJsonArray rows(const QAbstractItemModel& model)
{
    QJsonArray array;
    const auto names = model.roleNames();
    for (int row = 0; row < model.rowCount(); ++row) {
        QJsonObject object;
        for (auto role = names.begin(); role != names.end(); ++role)
            object.insert(QString::fromLatin1(role.value()), toJson(model.index(row, 0).data(role.key())));
        array.append(object);
    }
    return array;
}

/// A value type of the interface, by its properties.
QJsonObject gadget(const QVariant& value)
{
    QJsonObject object;
    const QMetaObject& type = *value.metaType().metaObject();
    for (int i = 0; i < type.propertyCount(); ++i)
        object.insert(QString::fromLatin1(type.property(i).name()), toJson(type.property(i).readOnGadget(value.constData())));
    return object;
}

QJsonValue toJson(const QVariant& value)
{
    switch (value.typeId()) {
    case QMetaType::Bool: return value.toBool();
    case QMetaType::Int: return value.toInt();
    case QMetaType::Double: return number(value.toDouble());
    case QMetaType::QString: return value.toString();
    case QMetaType::QStringList: return QJsonArray::fromStringList(value.toStringList());
    default: break;
    }
    if (value.metaType() == QMetaType::fromType<QList<QPointF>>())
        return points(value.value<QList<QPointF>>());
    if (value.typeId() == QMetaType::QVariantMap) {
        QJsonObject object;
        const QVariantMap map = value.toMap();
        for (auto it = map.begin(); it != map.end(); ++it)
            object.insert(it.key(), toJson(it.value()));
        return object;
    }
    if (value.typeId() == QMetaType::QVariantList) {
        QJsonArray array;
        for (const QVariant& v : value.toList())
            array.append(toJson(v));
        return array;
    }
    if (const auto* model = value.value<QAbstractItemModel*>())
        return rows(*model);
    // a form that is part of another one
    if (const auto* part = value.value<QObject*>())
        return dump(*part);
    if (value.metaType().flags() & QMetaType::IsGadget)
        return gadget(value);
    return QStringLiteral("not dumped: ") + QLatin1String(value.typeName());
}

QJsonObject dump(const QObject& object)
{
    QJsonObject out;
    const QMetaObject& type = *object.metaObject();
    for (int i = QObject::staticMetaObject.propertyCount(); i < type.propertyCount(); ++i)
        if (const QMetaProperty property = type.property(i); qstrcmp(property.name(), "desk") != 0 && qstrcmp(property.name(), "book") != 0)
            out.insert(QString::fromLatin1(property.name()), toJson(property.read(&object)));
    return out;
}

/// A form that looks at one thing of the desk.
template <typename Form, typename Choose>
QJsonObject dumpForm(DeskService& service, const Choose& choose)
{
    Form form;
    form.setDeskService(&service);
    choose(form);
    return dump(form);
}

QString shortly(const QJsonValue& value)
{
    return value.isUndefined() ? QStringLiteral("nothing") : value.toVariant().toString().isEmpty() ? QStringLiteral("something else") : value.toVariant().toString();
}

}

namespace modeldump {

QJsonObject of(const SeasonSetup& setup)
{
    DeskService service;
    service.desk().replaceAll(setup.marks, setup.kit, setup.setup);
    SetupView page;
    page.setDesk(&service);
    KitView kit;
    kit.setDesk(&service);
    const auto asItIs = [](auto&) {};
    QJsonArray measured, hung;
    for (const auto& item : setup.kit) {
        const auto thisItem = [&](auto& form) { form.setItemId(QString::fromStdString(item.id.hex())); };
        const bool chain = std::holds_alternative<steelyard::ChainMeasurement>(item.measurement);
        measured.append(chain ? dumpForm<ChainEditor>(service, thisItem) : dumpForm<BandEditor>(service, thisItem));
    }
    for (std::size_t i = 0; i < setup.setup.hung.size(); ++i)
        hung.append(dumpForm<HangEditor>(service, [&](HangEditor& form) { form.setRow(static_cast<int>(i)); }));
    return {{QStringLiteral("setUp"), dump(page)},
            {QStringLiteral("kit"), dump(kit)},
            {QStringLiteral("marks"), dumpForm<MarksEditor>(service, asItIs)},
            {QStringLiteral("bar"), dumpForm<BarEditor>(service, asItIs)},
            {QStringLiteral("measured"), measured},
            {QStringLiteral("hung"), hung}};
}

QString firstDifference(const QJsonValue& actual, const QJsonValue& expected, const QString& path)
{
    if (actual == expected)
        return {};
    if (actual.isObject() && expected.isObject()) {
        const QJsonObject a = actual.toObject(), b = expected.toObject();
        for (const QString& key : a.keys() + b.keys())
            if (const QString found = firstDifference(a.value(key), b.value(key), path + QLatin1Char('.') + key); !found.isEmpty())
                return found;
    }
    if (actual.isArray() && expected.isArray()) {
        const QJsonArray a = actual.toArray(), b = expected.toArray();
        for (qsizetype i = 0; i < std::max(a.size(), b.size()); ++i)
            if (const QString found = firstDifference(a.at(i), b.at(i), path + QStringLiteral("[%1]").arg(i)); !found.isEmpty())
                return found;
    }
    return QStringLiteral("%1: %2 instead of %3").arg(path, shortly(actual), shortly(expected));
}

}
