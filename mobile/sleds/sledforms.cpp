// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/sleds/sledforms.h"

#include "core/work/records/codec.h"

using namespace steelyard;

namespace sledforms {

namespace {

// keys of what is half entered, as records write their quantities; 1 says the version
enum DraftKey : std::uint32_t { DraftVersion = 1, DraftName, DraftPulls, DraftBelt, DraftStep, DraftAccuracy, DraftAdded, DraftPull, DraftDistance, DraftTime };
constexpr int version = 1;

QByteArray bytesOf(const RecordWriter& writer)
{
    const auto content = writer.content();
    return content ? QByteArray(reinterpret_cast<const char*>(content->data()), static_cast<qsizetype>(content->size())) : QByteArray();
}

RecordReader readerOf(const QByteArray& bytes)
{
    return RecordReader(std::as_bytes(std::span(bytes.constData(), static_cast<std::size_t>(bytes.size()))));
}

std::optional<PullTyped> pullIn(RecordReader reader)
{
    PullTyped pull{reader.mass(DraftAdded), reader.mass(DraftPull)};
    return reader.fits() ? std::optional(pull) : std::nullopt;
}

}

QByteArray bytesOf(const SurfaceForm& form, const VaultSettings& units)
{
    RecordWriter writer(units);
    writer.number(DraftVersion, version).text(DraftName, form.name).length(DraftBelt, form.belt).mass(DraftStep, form.step).mass(DraftAccuracy, form.accuracy);
    std::vector<std::optional<journal::ByteBuffer>> pulls;
    for (const PullTyped& pull : form.pulls)
        pulls.push_back(RecordWriter(units).mass(DraftAdded, pull.added).mass(DraftPull, pull.pull).content());
    if (!pulls.empty())
        writer.list(DraftPulls, pulls);
    return bytesOf(writer);
}

std::optional<SurfaceForm> surfaceIn(const QByteArray& bytes)
{
    RecordReader reader = readerOf(bytes);
    if (!reader.is() || reader.neededNumber(DraftVersion) != version)
        return std::nullopt;
    SurfaceForm form;
    form.name = reader.neededText(DraftName);
    form.belt = reader.length(DraftBelt);
    form.step = reader.mass(DraftStep);
    form.accuracy = reader.mass(DraftAccuracy);
    form.pulls = reader.list<PullTyped>(DraftPulls, pullIn);
    return reader.fits() ? std::optional(form) : std::nullopt;
}

QByteArray bytesOf(const RunForm& form, const VaultSettings& units)
{
    RecordWriter writer(units);
    writer.number(DraftVersion, version).text(DraftName, form.surface).mass(DraftAdded, form.added).length(DraftDistance, form.distance).length(DraftBelt, form.belt).duration(DraftTime, form.time);
    return bytesOf(writer);
}

std::optional<RunForm> runIn(const QByteArray& bytes)
{
    RecordReader reader = readerOf(bytes);
    if (!reader.is() || reader.neededNumber(DraftVersion) != version)
        return std::nullopt;
    RunForm form;
    form.surface = reader.neededText(DraftName);
    form.added = reader.mass(DraftAdded);
    form.distance = reader.length(DraftDistance);
    form.belt = reader.length(DraftBelt);
    form.time = reader.duration(DraftTime);
    return reader.fits() ? std::optional(form) : std::nullopt;
}

SledSurface record(const SurfaceForm& form)
{
    SledSurface surface;
    surface.name = form.name;
    for (const PullTyped& pull : form.pulls)
        if (pull.added && pull.pull)
            surface.readings.push_back({*pull.added, *pull.pull});
    surface.hip = form.belt;
    surface.scaleStep = form.step;
    surface.scaleAccuracy = form.accuracy;
    return surface;
}

std::optional<SledRunTimed> record(const RunForm& form)
{
    if (form.surface.empty() || !form.added || !form.distance || !form.time)
        return std::nullopt;
    SledRunTimed run;
    run.surface = form.surface;
    run.added = *form.added;
    run.distance = *form.distance;
    run.time = *form.time;
    run.hip = form.belt;
    return run;
}

}
