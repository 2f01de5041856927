// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/text/liftnames.h"

#include <QCoreApplication>

#include <array>

namespace liftnames {

namespace {

// for the catalogues: core knows no translators
constexpr std::array known = {
    QT_TRANSLATE_NOOP("lifts", "back squat"),
    QT_TRANSLATE_NOOP("lifts", "front squat"),
    QT_TRANSLATE_NOOP("lifts", "split squat"),
    QT_TRANSLATE_NOOP("lifts", "single-leg squat"),
    QT_TRANSLATE_NOOP("lifts", "step-up"),
    QT_TRANSLATE_NOOP("lifts", "bench press"),
    QT_TRANSLATE_NOOP("lifts", "incline press"),
    QT_TRANSLATE_NOOP("lifts", "overhead press"),
    QT_TRANSLATE_NOOP("lifts", "push press"),
    QT_TRANSLATE_NOOP("lifts", "bent-over row"),
    QT_TRANSLATE_NOOP("lifts", "pull-up"),
    QT_TRANSLATE_NOOP("lifts", "chin-up"),
    QT_TRANSLATE_NOOP("lifts", "dip"),
    QT_TRANSLATE_NOOP("lifts", "deadlift"),
    QT_TRANSLATE_NOOP("lifts", "hex-bar deadlift"),
    QT_TRANSLATE_NOOP("lifts", "Romanian deadlift"),
    QT_TRANSLATE_NOOP("lifts", "hip thrust"),
    QT_TRANSLATE_NOOP("lifts", "clean"),
    QT_TRANSLATE_NOOP("lifts", "jerk"),
    QT_TRANSLATE_NOOP("lifts", "snatch"),
    QT_TRANSLATE_NOOP("lifts", "clean pull"),
    QT_TRANSLATE_NOOP("lifts", "snatch pull"),
    QT_TRANSLATE_NOOP("lifts", "leg press, two legs"),
    QT_TRANSLATE_NOOP("lifts", "leg press, one leg"),
    QT_TRANSLATE_NOOP("lifts", "isometric squat"),
    QT_TRANSLATE_NOOP("lifts", "isometric mid-thigh pull"),
    QT_TRANSLATE_NOOP("lifts", "kettlebell swing"),
    QT_TRANSLATE_NOOP("lifts", "kettlebell clean"),
    QT_TRANSLATE_NOOP("lifts", "kettlebell press"),
    QT_TRANSLATE_NOOP("lifts", "log clean and press"),
    QT_TRANSLATE_NOOP("lifts", "keg press"),
    QT_TRANSLATE_NOOP("lifts", "tyre flip"),
    QT_TRANSLATE_NOOP("lifts", "farmer's carry"),
    QT_TRANSLATE_NOOP("lifts", "suitcase carry"),
    QT_TRANSLATE_NOOP("lifts", "yoke carry"),
    QT_TRANSLATE_NOOP("lifts", "front carry"),
    QT_TRANSLATE_NOOP("lifts", "overhead carry"),
    QT_TRANSLATE_NOOP("lifts", "sled tow"),
    QT_TRANSLATE_NOOP("lifts", "sled push"),
    QT_TRANSLATE_NOOP("lifts", "jump"),
    QT_TRANSLATE_NOOP("lifts", "medicine-ball throw"),
};

}

QString name(const steelyard::Lift& lift)
{
    return QCoreApplication::translate("lifts", lift.term.data());
}

QStringList terms()
{
    QStringList all;
    for (const char* term : known)
        all << QString::fromUtf8(term);
    return all;
}

}
