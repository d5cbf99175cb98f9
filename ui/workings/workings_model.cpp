// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/workings/workings_model.h"

#include <algorithm>

namespace hearth::ui::workings {

using judging::AskedGroup;
using judging::Question;
using judging::Worksheet;

namespace {

constexpr std::size_t kMostBefore = 100;

/// Every place of a sheet that may hold something.
template <class Visit>
void forEachField(const Worksheet& sheet, const Visit& visit) {
    for (const AskedGroup& group : judging::infoOf(sheet.question()).groups) {
        for (int row = 0; row < sheet.rows(group.group); ++row) {
            for (const reg::Item item : group.items) {
                visit(FieldAt{group.group, row, item});
            }
        }
    }
}

std::optional<rulebook::Outcome> gravestOf(const judging::Answer& answer) {
    std::optional<rulebook::Outcome> gravest;
    for (const auto& judged : answer.findings) {
        gravest = gravest ? rulebook::graver(*gravest, judged.finding.outcome) : judged.finding.outcome;
    }
    return gravest;
}

/// The same entries, by the rules of another day.
Worksheet redated(const Worksheet& sheet, calendar::Date day) {
    Worksheet copy(sheet.question(), day);
    forEachField(sheet, [&](const FieldAt& at) {
        if (const reg::Entry* entry = sheet.find(at.group, at.row, at.item)) {
            copy.put(at.group, at.row, at.item, entry->text, entry->unit);
        }
    });
    return copy;
}

}  // namespace

WorkingsModel::WorkingsModel(const shell::Context& context, QObject* parent)
    : QObject(parent), m_context(context), m_book({}), m_question(judging::questions().front().question) {
    const calendar::Date today = context.clock.today();
    for (const auto& info : judging::questions()) {
        m_works.emplace(info.question, Work{Worksheet(info.question, today), {}, {}});
    }
}

void WorkingsModel::refresh() {
    auto book = m_context.store.ruleBook();
    m_bookError = book ? std::nullopt : std::optional(book.error());
    m_book = book ? std::move(*book) : rulebook::RuleBook({});
    const calendar::Date today = m_context.clock.today();
    for (auto& [question, work] : m_works) {
        if (!(work.sheet.on() == today)) {
            work.sheet = redated(work.sheet, today);
        }
        work.outcome = gravestOf(answerOf(work.sheet));
    }
    answerAgain();
}

void WorkingsModel::choose(Question question) {
    if (question == m_question) {
        return;
    }
    m_question = question;
    answerAgain();
    Q_EMIT refilled();
}

void WorkingsModel::keepBefore() {
    Work& work = m_works.at(m_question);
    work.before.push_back(work.sheet);
    if (work.before.size() > kMostBefore) {
        work.before.erase(work.before.begin());
    }
    m_storeIsNewest = false;
}

void WorkingsModel::put(const FieldAt& at, const QString& text, quantity::UnitCode unit) {
    keepBefore();
    m_works.at(m_question).sheet.put(at.group, at.row, at.item, text.toStdString(), unit);
    answerAgain();
}

void WorkingsModel::clear() {
    if (sheet().isEmpty()) {
        return;
    }
    keepBefore();
    m_works.at(m_question).sheet = Worksheet(m_question, sheet().on());
    answerAgain();
    Q_EMIT refilled();
}

bool WorkingsModel::wasCleared() const {
    const Work& work = m_works.at(m_question);
    return work.sheet.isEmpty() && !work.before.empty() && !work.before.back().isEmpty();
}

bool WorkingsModel::takeBack() {
    Work& work = m_works.at(m_question);
    if (std::exchange(m_storeIsNewest, false) || work.before.empty()) {
        return false;
    }
    work.sheet = redated(work.before.back(), work.sheet.on());
    work.before.pop_back();
    answerAgain();
    Q_EMIT refilled();
    return true;
}

judging::Answer WorkingsModel::answerOf(const Worksheet& sheet) const {
    return sheet.isEmpty() || m_bookError ? judging::Answer() : judging::answer(sheet, m_book);
}

void WorkingsModel::answerAgain() {
    Work& work = m_works.at(m_question);
    m_answer = answerOf(work.sheet);
    work.outcome = gravestOf(m_answer);
    Q_EMIT answered();
}

rulebook::Gas gasOf(const Worksheet& sheet) {
    const auto* entry = sheet.find(judging::Group::Once, 0, reg::Item::GasFamily);
    const auto gas = entry == nullptr ? std::nullopt : rulebook::gasFromText(entry->canonical);
    return gas.value_or(rulebook::Gas::NaturalGas);
}

int rowsShown(const Worksheet& sheet, const AskedGroup& group) {
    return group.group == judging::Group::Once ? 1 : std::min(sheet.rows(group.group) + 1, group.most);
}

}  // namespace hearth::ui::workings
