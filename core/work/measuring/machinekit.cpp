// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/measuring/machinekit.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace steelyard {

namespace {

bool byRadius(const MachineMeasurement& machine) { return machine.by == MachineMeasuring::Radius; }
bool isWhole(const MachineMeasurement& machine, const MachineReading& r) { return byRadius(machine) ? r.angle && r.radius : r.travel && r.pull; }

/// Where a reading stands along the way, and what it read there; in SI, whichever they are.
double placeOf(const MachineMeasurement& machine, const MachineReading& r) { return byRadius(machine) ? r.angle->radians : r.travel->si(); }
double sizeOf(const MachineMeasurement& machine, const MachineReading& r) { return byRadius(machine) ? r.radius->si() : r.pull->si(); }

std::optional<Error> wrongReading(const MachineMeasurement& machine, const std::vector<std::size_t>& inOrder)
{
    const auto inReading = [](Refusal code, std::size_t index) { return Error{code, "reading " + std::to_string(index + 1)}; };
    for (const std::size_t i : inOrder) {
        const double place = placeOf(machine, machine.readings[i]), size = sizeOf(machine, machine.readings[i]);
        if (!std::isfinite(place) || !std::isfinite(size) || size < 0)
            return inReading(Refusal::OutOfRange, i);
    }
    if (inOrder.size() < 2)
        return Error{Refusal::TooFewPoints, byRadius(machine) ? "angles" : "travels"};
    for (std::size_t at = 1; at < inOrder.size(); ++at)
        if (placeOf(machine, machine.readings[inOrder[at]]) == placeOf(machine, machine.readings[inOrder[at - 1]]))
            return inReading(Refusal::PointsNotApart, std::max(inOrder[at], inOrder[at - 1]));
    return std::nullopt;
}

std::optional<Error> notAbove(const std::optional<Entered<Mass>>& mass, const char* what)
{
    if (!mass)
        return Error{Refusal::NotThere, what};
    return std::isfinite(mass->si()) && mass->si() > 0 ? std::nullopt : std::optional(Error{Refusal::OutOfRange, what});
}

/// The reading of the most radius or pull.
std::size_t greatest(const MachineMeasurement& machine)
{
    const auto inOrder = machineReadingsThatCount(machine);
    return *std::max_element(inOrder.begin(), inOrder.end(), [&](std::size_t a, std::size_t b) { return sizeOf(machine, machine.readings[a]) < sizeOf(machine, machine.readings[b]); });
}

/// u of a mean over a way whose two ends are each off by `u`, by themselves.
double uOfEnds(double mean, double atStart, double atEnd, double way, double u)
{
    return std::hypot(mean - atStart, atEnd - mean) / way * u;
}

Result<MachineAnswer> turned(const MachineMeasurement& machine)
{
    const auto cam = camFrom(machine);
    if (!cam)
        return cam.error();
    if (auto wrong = notAbove(machine.stack, "stack"))
        return *wrong;
    const Mass stack = *machine.stack;
    const Angle from = cam->first(), to = cam->last();
    const double way = to.radians - from.radians;
    MachineAnswer answer;
    answer.rise = cam->rise(from, to).value_or(Length{});
    answer.work = weight(stack) * answer.rise;
    const double mean = answer.work.si() / way;
    const double atStart = cam->torque(stack, from).value_or(Torque{}).newtonMetres, atEnd = cam->torque(stack, to).value_or(Torque{}).newtonMetres;
    const double shared = std::hypot(uStackShare * mean, weight(stack).si() * cam->doubt().radius.si());
    answer.meanTorque = TorqueReading{Torque{mean}, Torque{std::hypot(shared, uOfEnds(mean, atStart, atEnd, way, cam->doubt().angle.radians))}};
    answer.uWork = joules(std::hypot(shared * way, std::hypot(atStart, atEnd) * cam->doubt().angle.radians));
    answer.greatestAngle = *machine.readings[greatest(machine)].angle;
    answer.greatestTorque = torqueAt(*cam, stack, answer.greatestAngle);
    return answer;
}

Result<MachineAnswer> pulled(const MachineMeasurement& machine)
{
    const auto pull = machinePullFrom(machine);
    if (!pull)
        return pull.error();
    if (auto wrong = notAbove(machine.stack, "stack"))
        return *wrong;
    const Length from = pull->first(), to = pull->last(), way = to - from;
    const Force mean = pull->mean(from, to).value_or(Force{}), atStart = pull->at(from).value_or(Force{}), atEnd = pull->at(to).value_or(Force{});
    const PullDoubt& doubt = pull->doubt();
    MachineAnswer answer;
    answer.meanPull = mean;
    answer.uMeanPull = newtons(std::hypot(doubt.scale.si(), uOfEnds(mean.si(), atStart.si(), atEnd.si(), way.si(), doubt.place.si())));
    answer.work = mean * way;
    answer.uWork = joules(std::hypot((doubt.scale * way).si(), std::hypot(atStart.si(), atEnd.si()) * doubt.place.si()));
    answer.greatestTravel = *machine.readings[greatest(machine)].travel;
    answer.greatestPull = pull->at(answer.greatestTravel);
    answer.uGreatestPull = pull->uncertaintyAt(answer.greatestTravel);
    return answer;
}

}

std::vector<std::size_t> machineReadingsThatCount(const MachineMeasurement& measurement)
{
    std::vector<std::size_t> counting;
    for (std::size_t i = 0; i < measurement.readings.size(); ++i)
        if (isWhole(measurement, measurement.readings[i]))
            counting.push_back(i);
    std::stable_sort(counting.begin(), counting.end(),
                     [&](std::size_t a, std::size_t b) { return placeOf(measurement, measurement.readings[a]) < placeOf(measurement, measurement.readings[b]); });
    return counting;
}

Result<CamProfile> camFrom(const MachineMeasurement& measurement)
{
    const auto inOrder = machineReadingsThatCount(measurement);
    if (auto wrong = wrongReading(measurement, inOrder))
        return *wrong;
    std::vector<CamProfile::Point> points;
    points.reserve(inOrder.size());
    for (const std::size_t i : inOrder)
        points.push_back({*measurement.readings[i].angle, *measurement.readings[i].radius});
    return CamProfile::of(points, {uCamRadius, uCamAngle});
}

Result<MeasuredPull> machinePullFrom(const MachineMeasurement& measurement)
{
    if (auto wrong = notAbove(measurement.scaleStep, "scale step"))
        return *wrong;
    const auto inOrder = machineReadingsThatCount(measurement);
    if (auto wrong = wrongReading(measurement, inOrder))
        return *wrong;
    std::vector<PositionPull> points;
    points.reserve(inOrder.size());
    for (const std::size_t i : inOrder)
        points.push_back({*measurement.readings[i].travel, weight(*measurement.readings[i].pull)});
    return MeasuredPull::of(points, {weight(kilograms(scaleReadingUncertainty(measurement.scaleStep->si(), 0))), 0, uTravel});
}

std::optional<TorqueReading> torqueAt(const CamProfile& cam, Mass stack, Angle at)
{
    const auto torque = cam.torque(stack, at);
    const auto uRadius = cam.uncertaintyAt(at);
    if (!torque || !uRadius)
        return std::nullopt;
    return TorqueReading{*torque, Torque{std::hypot(uStackShare * torque->newtonMetres, camTorque(stack, *uRadius).newtonMetres)}};
}

Result<MachineAnswer> answerOf(const MachineMeasurement& measurement)
{
    return byRadius(measurement) ? turned(measurement) : pulled(measurement);
}

std::optional<MachineAdvice> nextMachineReading(const MachineMeasurement& measurement)
{
    const auto inOrder = machineReadingsThatCount(measurement);
    if (inOrder.size() < 2 || inOrder.size() >= mostMachineReadingCount)
        return std::nullopt;
    const auto place = [&](std::size_t at) { return placeOf(measurement, measurement.readings[inOrder[at]]); };
    const double way = place(inOrder.size() - 1) - place(0);
    // five readings evenly over the way leave gaps of a quarter
    double widest = inOrder.size() < fewestMachineReadingCount ? 0 : way / 4 * (1 + 1e-9);
    std::optional<double> next;
    for (std::size_t at = 1; at < inOrder.size(); ++at)
        if (const double gap = place(at) - place(at - 1); gap > widest) {
            widest = gap;
            next = place(at - 1) + gap / 2;
        }
    if (!next)
        return std::nullopt;
    return byRadius(measurement) ? MachineAdvice{Angle{*next}, std::nullopt} : MachineAdvice{std::nullopt, metres(*next)};
}

}
