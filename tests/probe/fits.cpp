// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/leastsquares.h"
#include "core/measure/monotonecurve.h"
#include "core/measure/uncertainty.h"
#include "core/resistance/machine.h"
#include "tests/probe/parts.h"

namespace steelyard::probe {

namespace {

struct XY {
    std::vector<double> x, y;
};

XY xyFrom(Fields& in)
{
    XY points{in.numbers("x", anyFinite), in.numbers("y", anyFinite)};
    if (points.x.size() != points.y.size())
        Fields::refuse("x and y", "must be of one length");
    return points;
}

PolynomialFit polynomialFrom(Fields& in)
{
    const XY points = xyFrom(in);
    const int degree = in.whole("degree", 1, 5);
    return accepted(PolynomialFit::of(points.x, points.y, degree, in.flag("through_origin")), "x and y");
}

}

Out fitPolynomial(Fields& in)
{
    const PolynomialFit polynomial = polynomialFrom(in);
    const auto errors = polynomial.fit().standardErrors();
    return {{"coefficients", polynomial.fit().coefficients},
            {"standard_errors", errors ? Out(*errors) : Out(nullptr)},
            {"residual_sd", orNull(polynomial.fit().residualSd)}};
}

Out fitPredict(Fields& in)
{
    const PolynomialFit polynomial = polynomialFrom(in);
    const double at = in.number("at", anyFinite);
    return {{"value", polynomial.at(at)}, {"u", orNull(polynomial.standardErrorAt(at))}};
}

Out interpolateMonotone(Fields& in)
{
    const XY points = xyFrom(in);
    const auto curve = accepted(MonotoneCurve::through(points.x, points.y), "x and y");
    Out y = Out::array();
    for (const double at : in.numbers("at", anyFinite))
        y.push_back(orNull(curve.at(at)));
    return {{"y", y}};
}

Out coverageFactor(Fields& in)
{
    const Json& given = in.value("degrees_of_freedom");
    const double freedom = given.is_null() ? knownExactly : Fields::checked(given, "degrees_of_freedom", {0, 1e300, false});
    return {{"k95", coverageFactor95(freedom)}};
}

Out measuredHelp(Fields& in)
{
    std::vector<PositionPull> points;
    for (const auto& [position, help] : in.pairs("points", anySize, anySize))
        points.push_back({metres(position), newtons(help)});
    const auto help = accepted(MeasuredPull::of(points)).at(metres(in.number("at_m", anySize)));
    return {{"help_n", help ? Out(help->si()) : Out(nullptr)}, {"u", help ? Out(0.0) : Out(nullptr)}};
}

Out camTorqueOf(Fields& in)
{
    const Mass stack = kilograms(in.number("stack_kg", notBelowZero));
    return {{"torque_nm", camTorque(stack, metres(in.number("radius_m", notBelowZero))).newtonMetres}};
}

}
