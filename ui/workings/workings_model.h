// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/judging/answer.h"
#include "ui/shell/place.h"

#include <QObject>

#include <map>
#include <optional>
#include <vector>

namespace hearth::ui::workings {

/// Which field of a question's sheet.
struct FieldAt {
    judging::Group group = judging::Group::Once;
    int row = 0;
    reg::Item item = reg::Item::VisitReference;
    bool operator==(const FieldAt&) const = default;
};

/// What was typed for each question while the program runs, and what is found from it. No widgets.
///
/// Nothing here is in the store: a sheet becomes part of a record only when it is taken over into a visit.
class WorkingsModel : public QObject {
    Q_OBJECT
  public:
    explicit WorkingsModel(const shell::Context& context, QObject* parent = nullptr);

    /// Reads the rule book and the day again and answers anew. What was typed stays.
    void refresh();

    [[nodiscard]] judging::Question question() const { return m_question; }
    void choose(judging::Question question);

    [[nodiscard]] const judging::Worksheet& sheet() const { return m_works.at(m_question).sheet; }
    [[nodiscard]] const judging::Worksheet& sheet(judging::Question question) const {
        return m_works.at(question).sheet;
    }
    /// Of the question that is chosen; empty while nothing is typed.
    [[nodiscard]] const judging::Answer& answer() const { return m_answer; }
    /// The gravest of what is found for a question; nothing while nothing is typed or found.
    [[nodiscard]] std::optional<rulebook::Outcome> outcome(judging::Question question) const {
        return m_works.at(question).outcome;
    }
    /// Why there is no rule book to answer by.
    [[nodiscard]] const std::optional<Error>& bookError() const { return m_bookError; }

    void put(const FieldAt& at, const QString& text, quantity::UnitCode unit);
    /// Empties the sheet; takeBack() brings it back.
    void clear();
    /// The newest change of this question's sheet is taken back; false when there is none.
    bool takeBack();
    /// The newest change is one of the store now (a sheet was taken over): the next taking back is the
    /// store's.
    void storeChanged() { m_storeIsNewest = true; }
    [[nodiscard]] bool wasCleared() const;

  Q_SIGNALS:
    /// Another question, or another sheet for it: every field refills.
    void refilled();
    /// What is found is new.
    void answered();

  private:
    struct Work {
        judging::Worksheet sheet;
        std::vector<judging::Worksheet> before;  // newest last
        std::optional<rulebook::Outcome> outcome = {};
    };
    void answerAgain();
    [[nodiscard]] judging::Answer answerOf(const judging::Worksheet& sheet) const;
    void keepBefore();

    const shell::Context& m_context;
    rulebook::RuleBook m_book;
    std::optional<Error> m_bookError;
    std::map<judging::Question, Work> m_works;
    judging::Question m_question;
    judging::Answer m_answer;
    bool m_storeIsNewest = false;
};

/// The gas that the sheet says; natural gas where it says none.
[[nodiscard]] rulebook::Gas gasOf(const judging::Worksheet& sheet);
/// How many rows a group shows: those that hold something and an empty one, as far as there may be more.
[[nodiscard]] int rowsShown(const judging::Worksheet& sheet, const judging::AskedGroup& group);

}  // namespace hearth::ui::workings
