// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/judging/worksheet.h"

#include <algorithm>

namespace hearth::judging {

namespace {

bool isOf(const reg::Entry& entry, const reg::SubjectRef& subject, reg::Item item) {
    return entry.subject == subject && entry.item == item;
}

}  // namespace

reg::SubjectRef Worksheet::subject(Group group, int row) {
    reg::SubjectRef subject;
    subject.kind = reg::SubjectKind::Appliance;
    subject.id[0] = static_cast<std::uint8_t>(group);
    subject.id[1] = static_cast<std::uint8_t>(row / 256);
    subject.id[2] = static_cast<std::uint8_t>(row % 256);
    return subject;
}

void Worksheet::put(Group group, int row, reg::Item item, const std::string& text, quantity::UnitCode unit) {
    const auto of = subject(group, row);
    std::erase_if(m_entries, [&](const reg::Entry& entry) { return isOf(entry, of, item); });
    if (text.find_first_not_of(" \t\n\r") == std::string::npos) {
        return;
    }
    reg::Entry entry;
    entry.subject = of;
    entry.item = item;
    entry.text = text;
    entry.unit = unit;
    entry.canonical = reg::canonicalOf(item, text).value_or(std::string());
    m_entries.push_back(std::move(entry));
}

const reg::Entry* Worksheet::find(Group group, int row, reg::Item item) const {
    const auto of = subject(group, row);
    const auto found = std::find_if(m_entries.begin(), m_entries.end(),
                                    [&](const reg::Entry& entry) { return isOf(entry, of, item); });
    return found == m_entries.end() ? nullptr : &*found;
}

int Worksheet::rows(Group group) const {
    int rows = 0;
    for (const auto& entry : m_entries) {
        if (entry.subject.id[0] == static_cast<std::uint8_t>(group)) {
            rows = std::max(rows, entry.subject.id[1] * 256 + entry.subject.id[2] + 1);
        }
    }
    return rows;
}

bool Worksheet::holdsAny(Group group, int row) const {
    const auto of = subject(group, row);
    return std::any_of(m_entries.begin(), m_entries.end(),
                       [&](const reg::Entry& entry) { return entry.subject == of; });
}

bool Worksheet::isAsked(Group group, int row, reg::Item item) const {
    return find(group, row, item) != nullptr || isOfUse(*this, group, row, item);
}

Readings Worksheet::readings(Group group, int row) const {
    return {m_entries, subject(group, row)};
}

}  // namespace hearth::judging
