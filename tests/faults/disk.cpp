// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/disk.h"

#include <algorithm>
#include <cstring>
#include <filesystem>
#include <fstream>

namespace faults {

namespace {

constexpr std::size_t sectorSize = 512;

using What = Operation::What;

bool isLost(Disk::Lost lost, std::mt19937& engine)
{
    return lost == Disk::Lost::Everything || (lost == Disk::Lost::ByChance && engine() % 2 == 0);
}

std::string folderOfName(const std::string& name)
{
    return name.substr(0, name.rfind('/'));
}

}

void Disk::change(std::string& content, const Change& change)
{
    if (change.cuts)
        return content.resize(change.offset);
    if (content.size() < change.offset + change.bytes.size())
        content.resize(change.offset + change.bytes.size());
    std::memcpy(content.data() + change.offset, change.bytes.data(), change.bytes.size());
}

void Disk::name(Names& names, const Naming& naming)
{
    switch (naming.operation.what) {
    case What::Create:
        names[naming.operation.name] = naming.file;
        break;
    case What::Rename:
        names[naming.operation.target] = naming.file;
        names.erase(naming.operation.name);
        break;
    default:
        names.erase(naming.operation.name);
    }
}

void Disk::apply(const Operation& operation)
{
    if (operation.what == What::Told)
        return;
    if (operation.what == What::Create) {
        m_files.emplace_back();
        m_namings.push_back({operation, m_files.size() - 1});
        return name(m_names, m_namings.back());
    }
    if (operation.what == What::ForceFolder) {
        std::vector<Naming> others;
        for (const Naming& naming : m_namings) {
            if (folderOfName(naming.operation.name) == operation.name)
                name(m_forcedNames, naming);
            else
                others.push_back(naming);
        }
        m_namings = std::move(others);
        return;
    }
    const auto named = m_names.find(operation.name);
    if (named == m_names.end())
        return;
    File& file = m_files[named->second];
    switch (operation.what) {
    case What::Write:
        file.changes.push_back({false, operation.offset, operation.bytes});
        break;
    case What::Truncate:
        file.changes.push_back({true, operation.offset, {}});
        break;
    case What::Force:
        for (const Change& made : file.changes)
            change(file.forced, made);
        file.changes.clear();
        break;
    default:
        m_namings.push_back({operation, named->second});
        name(m_names, m_namings.back());
    }
}

std::string Disk::contentOf(const File& file, Lost lost, std::mt19937& engine)
{
    std::string content = file.forced;
    for (const Change& made : file.changes) {
        if (made.cuts) {
            if (!isLost(lost, engine))
                change(content, made);
            continue;
        }
        for (std::size_t at = 0; at < made.bytes.size(); at += sectorSize)
            if (!isLost(lost, engine))
                change(content, {false, made.offset + at, made.bytes.substr(at, sectorSize)});
    }
    return content;
}

void Disk::layOut(const std::string& root, Lost lost, std::mt19937& engine) const
{
    Names names = m_forcedNames;
    for (const Naming& naming : m_namings)
        if (!isLost(lost, engine) && (naming.operation.what == What::Create || names.contains(naming.operation.name)))
            name(names, naming);
    for (const auto& [path, file] : names) {
        const std::filesystem::path place = std::filesystem::path(root) / path;
        std::filesystem::create_directories(place.parent_path());
        const std::string content = contentOf(m_files[file], lost, engine);
        std::ofstream out(place, std::ios::binary);
        // The reserve is nothing but noughts, which need not be written.
        if (std::any_of(content.begin(), content.end(), [](char byte) { return byte != 0; }))
            out << content;
        out.close();
        std::filesystem::resize_file(place, content.size());
    }
}

}
