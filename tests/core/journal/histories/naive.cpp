// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/journal/histories/naive.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace naive {

namespace {

using Number = long long;

/// Unsigned numbers from a byte string, high byte first.
Number wholeAt(const std::string& bytes, std::size_t at, std::size_t size)
{
    unsigned long long number = 0;
    for (std::size_t i = 0; i < size; ++i)
        number = number * 256 + static_cast<unsigned char>(bytes.at(at + i));
    return static_cast<Number>(number);
}

struct Value {
    Number number = 0;
    std::string text, raw;
    std::vector<Value> list;
    std::map<Number, Value> map;
};

/// CBOR of the few kinds that entries have (RFC 8949, section 3); they were written by the code under test, so nothing is refused.
Value read(const std::string& bytes, std::size_t& at)
{
    Value value;
    const std::size_t start = at;
    const int first = static_cast<unsigned char>(bytes.at(at++));
    const int major = first / 32, low = first % 32;
    Number count = low;
    if (major < 7 && low >= 24) {
        const std::size_t size = std::size_t(1) << (low - 24);
        count = wholeAt(bytes, at, size);
        at += size;
    }
    if (major == 0 || major == 7)
        value.number = count;
    if (major == 1)
        value.number = -1 - count;
    if (major == 2 || major == 3) {
        value.text = bytes.substr(at, static_cast<std::size_t>(count));
        at += static_cast<std::size_t>(count);
    }
    for (Number i = 0; major == 4 && i < count; ++i)
        value.list.push_back(read(bytes, at));
    for (Number i = 0; major == 5 && i < count; ++i) {
        const Number key = read(bytes, at).number;
        value.map[key] = read(bytes, at);
    }
    value.raw = bytes.substr(start, at - start);
    return value;
}

struct Entry {
    std::string id, origin, athlete, subject, content, place;
    Number incarnation = 0, sequence = 0, kind = 0, subjectKind = 0, shownTime = 0, shownDay = 0;
    std::tuple<Number, Number, std::string, std::string> rank;
    std::set<std::string> replaces;
    Value body;
};

const Value& at(const Value& value, Number key)
{
    static const Value none;
    const auto place = value.map.find(key);
    return place == value.map.end() ? none : place->second;
}

Number registerClass(Number kind)
{
    const std::map<Number, Number> classes = {{1, 1}, {2, 2}, {3, 3}, {4, 4}, {5, 5}, {6, 5}, {7, 6}, {8, 7}};
    return classes.at(kind);
}

std::vector<Entry> readable(const std::vector<Raw>& raws)
{
    std::vector<Entry> entries;
    for (const Raw& raw : raws) {
        if (raw.bytes.size() == 96)
            continue;
        Entry entry;
        std::size_t start = 0;
        entry.body = read(raw.bytes.substr(96 + 16), start);
        const Value& body = entry.body;
        entry.kind = at(body, 1).number;
        if (at(body, 0).number != 1 || entry.kind > 8 || body.map.rbegin()->first > 14)
            continue;
        entry.id = raw.id;
        entry.incarnation = wholeAt(raw.bytes, 4, 4);
        entry.sequence = wholeAt(raw.bytes, 8, 8);
        entry.origin = raw.bytes.substr(16, 16);
        entry.subjectKind = at(body, 6).number;
        entry.subject = at(body, 7).text;
        entry.athlete = at(body, 8).text;
        entry.content = at(body, 14).raw;
        entry.rank = {at(body, 2).number, at(body, 3).number, entry.origin, entry.id};
        for (const Value& id : at(body, 11).list)
            entry.replaces.insert(id.text);
        entry.shownTime = body.map.contains(5) ? at(body, 5).number : at(body, 2).number;
        entry.shownDay = at(body, 9).number;
        entry.place = std::to_string(registerClass(entry.kind)) + "|" + entry.athlete + "|" + std::to_string(entry.subjectKind) + "|"
            + entry.subject + "|" + std::to_string(at(body, 12).number) + "|" + at(body, 13).text;
        entries.push_back(entry);
    }
    return entries;
}

bool isHead(const Entry& entry, const std::vector<Entry>& entries)
{
    return entry.kind != 6 && std::none_of(entries.begin(), entries.end(), [&entry](const Entry& other) {
        return other.place == entry.place && other.replaces.contains(entry.id);
    });
}

void moveTimes(std::vector<Entry>& entries, const std::vector<Entry>& shifts)
{
    for (Entry& entry : entries) {
        const Entry* best = nullptr;
        for (const Entry& shift : shifts) {
            std::size_t start = 0;
            const Value stretch = read(shift.content, start);
            const bool covers = shift.subject == entry.origin && at(stretch, 1).number == entry.incarnation
                && at(stretch, 2).number <= entry.sequence && at(stretch, 3).number >= entry.sequence;
            if (covers && (!best || best->rank < shift.rank))
                best = &shift;
        }
        if (best) {
            std::size_t start = 0;
            const Value stretch = read(best->content, start);
            entry.shownTime += at(stretch, 4).number;
            entry.shownDay += at(stretch, 5).number;
        }
    }
}

}

std::vector<std::string> shownLines(const std::vector<Raw>& raws)
{
    std::vector<Entry> entries = readable(raws);
    std::set<std::string> erased;
    for (const Entry& entry : entries) {
        if (entry.kind == 8)
            erased.insert(entry.subject);
    }
    std::erase_if(entries, [&erased](const Entry& entry) { return entry.kind != 8 && erased.contains(entry.athlete); });

    std::vector<Entry> heads, shifts;
    for (const Entry& entry : entries) {
        if (isHead(entry, entries)) {
            heads.push_back(entry);
            if (entry.kind == 7)
                shifts.push_back(entry);
        }
    }
    moveTimes(heads, shifts);

    std::map<std::string, std::vector<Entry>> registers;
    for (const Entry& head : heads)
        registers[head.place].push_back(head);
    std::vector<std::string> lines;
    for (auto& [place, here] : registers) {
        std::sort(here.begin(), here.end(), [](const Entry& a, const Entry& b) { return a.rank > b.rank; });
        std::string line = place;
        bool unequal = false;
        for (const Entry& head : here) {
            line += "|" + head.id + head.content + std::to_string(head.shownTime) + "," + std::to_string(head.shownDay);
            unequal |= head.content != here.front().content;
        }
        lines.push_back(line + (unequal && registerClass(here.front().kind) <= 4 ? "|review" : ""));
    }
    std::sort(lines.begin(), lines.end());
    return lines;
}

}
