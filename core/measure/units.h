// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>
#include <numbers>

namespace steelyard {

/// A physical quantity with its dimension in the type; the number inside is always SI (kg, m, s, N, J).
/// Products and quotients carry their dimension; a ratio of like quantities is a plain double.
/// It holds any double, also a non-finite one: whoever builds a record from outside checks it there.
template <int MassPower, int LengthPower, int TimePower>
class Quantity {
public:
    constexpr Quantity() = default;
    [[nodiscard]] static constexpr Quantity fromSi(double value)
    {
        Quantity q;
        q.m_si = value;
        return q;
    }
    [[nodiscard]] constexpr double si() const { return m_si; }

    constexpr bool operator==(const Quantity&) const = default;
    constexpr std::partial_ordering operator<=>(const Quantity& other) const { return m_si <=> other.m_si; }
    constexpr Quantity& operator+=(Quantity other) { m_si += other.m_si; return *this; }
    constexpr Quantity& operator-=(Quantity other) { m_si -= other.m_si; return *this; }
    [[nodiscard]] friend constexpr Quantity operator+(Quantity a, Quantity b) { return fromSi(a.m_si + b.m_si); }
    [[nodiscard]] friend constexpr Quantity operator-(Quantity a, Quantity b) { return fromSi(a.m_si - b.m_si); }
    [[nodiscard]] friend constexpr Quantity operator-(Quantity a) { return fromSi(-a.m_si); }
    [[nodiscard]] friend constexpr Quantity operator*(Quantity a, double k) { return fromSi(a.m_si * k); }
    [[nodiscard]] friend constexpr Quantity operator*(double k, Quantity a) { return fromSi(k * a.m_si); }
    [[nodiscard]] friend constexpr Quantity operator/(Quantity a, double k) { return fromSi(a.m_si / k); }
    [[nodiscard]] friend constexpr double operator/(Quantity a, Quantity b) { return a.m_si / b.m_si; }

private:
    double m_si = 0;
};

template <int M1, int L1, int T1, int M2, int L2, int T2>
    requires(M1 + M2 != 0 || L1 + L2 != 0 || T1 + T2 != 0)
[[nodiscard]] constexpr auto operator*(Quantity<M1, L1, T1> a, Quantity<M2, L2, T2> b)
{
    return Quantity<M1 + M2, L1 + L2, T1 + T2>::fromSi(a.si() * b.si());
}

template <int M1, int L1, int T1, int M2, int L2, int T2>
    requires(M1 != M2 || L1 != L2 || T1 != T2)
[[nodiscard]] constexpr auto operator/(Quantity<M1, L1, T1> a, Quantity<M2, L2, T2> b)
{
    return Quantity<M1 - M2, L1 - L2, T1 - T2>::fromSi(a.si() / b.si());
}

using Mass = Quantity<1, 0, 0>;
using Length = Quantity<0, 1, 0>;
using Force = Quantity<1, 1, -2>;
using LinearDensity = Quantity<1, -1, 0>;
using Density = Quantity<1, -3, 0>;
using Stiffness = Quantity<1, 0, -2>;
using Acceleration = Quantity<0, 1, -2>;
using Energy = Quantity<1, 2, -2>;
using Volume = Quantity<0, 3, 0>;
using Speed = Quantity<0, 1, -1>;
/// How often a second; a rate of samples.
using Frequency = Quantity<0, 0, -1>;
/// A force over a time, N·s; and the rate at which one rises, N/s.
using Impulse = Quantity<1, 1, -1>;
using ForceRate = Quantity<1, 1, -3>;
/// A mass carried over a distance (kg·m): not a mass, so it adds to none.
using MassDistance = Quantity<1, 1, 0>;

/// A height of the bar's centre line above the surface the kit stands on, read at the sleeve.
using Height = Length;

/// Turning moment; the same dimension as energy and never the same thing.
struct Torque {
    double newtonMetres = 0;
    constexpr auto operator<=>(const Torque&) const = default;
};

/// A plane angle in radians.
struct Angle {
    double radians = 0;
    constexpr auto operator<=>(const Angle&) const = default;
};

/// One degree of arc, as keyed and as read off a protractor.
inline constexpr Angle oneDegree{std::numbers::pi / 180};

/// Standard gravity, exact: resolution of the 3rd CGPM (1901).
inline constexpr Acceleration standardGravity = Acceleration::fromSi(9.80665);
/// One avoirdupois pound, exact: international yard and pound agreement (1959).
inline constexpr Mass pound = Mass::fromSi(0.45359237);
/// One inch, exact: international yard and pound agreement (1959).
inline constexpr Length inch = Length::fromSi(0.0254);
/// Density of steel used for gauged chain, EN 1991-1-1 Table A.4 gives 77–78.5 kN/m³; 7850 kg/m³ is the usual figure.
inline constexpr Density steelDensity = Density::fromSi(7850);

/// From a bare number, at the edge where one comes in.
[[nodiscard]] constexpr Mass kilograms(double v) { return Mass::fromSi(v); }
[[nodiscard]] constexpr Mass pounds(double v) { return Mass::fromSi(v * pound.si()); }
[[nodiscard]] constexpr Length metres(double v) { return Length::fromSi(v); }
[[nodiscard]] constexpr Force newtons(double v) { return Force::fromSi(v); }
[[nodiscard]] constexpr LinearDensity kilogramsPerMetre(double v) { return LinearDensity::fromSi(v); }
[[nodiscard]] constexpr Frequency hertz(double v) { return Frequency::fromSi(v); }
[[nodiscard]] constexpr Energy joules(double v) { return Energy::fromSi(v); }

/// To a bare number, at the edge where one goes out.
[[nodiscard]] constexpr double inKilograms(Mass m) { return m.si(); }
[[nodiscard]] constexpr double inPounds(Mass m) { return m / pound; }
[[nodiscard]] constexpr double inMetres(Length l) { return l.si(); }
[[nodiscard]] constexpr double inNewtons(Force f) { return f.si(); }

/// The weight of a mass at standard gravity.
[[nodiscard]] constexpr Force weight(Mass m) { return m * standardGravity; }
/// A pull as coaches say it: the mass that weighs as much at standard gravity.
[[nodiscard]] constexpr Mass asMass(Force f) { return f / standardGravity; }

}
