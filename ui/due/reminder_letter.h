// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/document.h"
#include "core/register/model.h"
#include "core/store/due_lines.h"
#include "ui/words/words.h"

#include <QString>

#include <map>
#include <memory>
#include <string>
#include <utility>
#include <vector>

namespace hearth::ui::due {

/// A reminder in words, as it goes out.
struct WordedReminder {
    QString subject;
    std::string text;           // word for word, as it is kept
    record::Document document;  // the same as a letter
};

/// By the firm's own text, else the program's. Errors: LetterLacks for what the firm or the recipient does
/// not have; what is wrong with the firm's text.
[[nodiscard]] Result<WordedReminder> wordReminder(const reg::Firm& firm, const store::Reminder& reminder,
                                                  calendar::Date today, record::Paper paper,
                                                  const words::Words& words);

/// Words each in the language that whoever gets it prefers, else in the firm's; where a second language
/// stands beside the first, in both.
class ReminderWording {
  public:
    ReminderWording(reg::Firm firm, calendar::Date today, record::Paper paper)
        : m_firm(std::move(firm)), m_today(today), m_paper(paper) {}
    /// Errors: as wordReminder().
    [[nodiscard]] Result<WordedReminder> word(const store::Reminder& reminder);

  private:
    [[nodiscard]] const words::Words& wordsIn(const std::string& language, bool isBeside);
    reg::Firm m_firm;
    calendar::Date m_today;
    record::Paper m_paper;
    std::map<std::pair<std::string, bool>, std::unique_ptr<words::Words>> m_words;
};

/// Writes these as one PDF with a bookmark for each. Errors: those of paper::mergePdfs() and
/// shell::writeFile().
[[nodiscard]] Result<void> writeLetters(const std::vector<WordedReminder>& letters, const QString& path,
                                        const words::Words& words);

}  // namespace hearth::ui::due
