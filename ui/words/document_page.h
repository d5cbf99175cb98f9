// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/words/document_words.h"

#include <QString>

#include <functional>
#include <string>
#include <vector>

/// The parts of the tightness and purge record, and what they share. Only documentFor() is for others.
namespace hearth::ui::words {

[[nodiscard]] inline std::string utf8(const QString& text) {
    return text.toStdString();
}

/// A document in the making: what it is made of, and how one value is put on the page.
class DocumentPage {
  public:
    DocumentPage(const DocumentInput& input, const Words& words)
        : m_input(input), m_words(words), m_findings(findingsOf(input)) {}

    [[nodiscard]] const reg::VisitFile& file() const { return m_input.file; }
    [[nodiscard]] const DocumentInput& input() const { return m_input; }
    [[nodiscard]] const Words& words() const { return m_words; }
    [[nodiscard]] reg::SubjectRef visit() const { return reg::subject(file().visit.id); }
    /// The tests that were made, in order.
    [[nodiscard]] std::vector<reg::Test> tests() const;
    [[nodiscard]] const std::vector<judging::Judged>& findings() const { return m_findings; }
    /// "Title" for the only test; "Title: after work" where there are several.
    [[nodiscard]] std::string titled(const QString& title, const reg::Test& test) const;
    [[nodiscard]] QString testLabel(const reg::Test& test) const;
    [[nodiscard]] bool severalTests() const { return tests().size() > 1; }

    [[nodiscard]] QString say(const char* english, const QStringList& arguments = {}) const {
        return m_words.say(english, arguments);
    }
    [[nodiscard]] std::string text(const char* english, const QStringList& arguments = {}) const {
        return utf8(m_words.say(english, arguments));
    }

    [[nodiscard]] bool has(const reg::SubjectRef& on, reg::Item item) const;
    /// What an entry says, worded: a choice's label, a number with its unit, an instrument's name, a text as
    /// typed. What can't be read is shown as typed and called so. Empty when there is no entry.
    [[nodiscard]] QString value(const reg::SubjectRef& on, reg::Item item) const;
    /// The same with the item's caption, or absent with the reason.
    [[nodiscard]] record::CaptionedValue captioned(const reg::SubjectRef& on, reg::Item item) const;
    /// Puts it in only when there is an entry.
    void addIfGiven(record::FieldGrid& grid, const reg::SubjectRef& on, reg::Item item) const;
    /// A value of the register: absent with `reason` when it is empty.
    [[nodiscard]] record::CaptionedValue field(const char* caption, const QString& value,
                                               const char* reason) const;
    /// Several items that one reason keeps from being there, as one absent value.
    [[nodiscard]] record::CaptionedValue absentTogether(const char* caption, const reg::SubjectRef& on,
                                                        reg::Item item) const;
    [[nodiscard]] QString typed(const quantity::Typed& typed) const;
    /// A cubic metre as the record shows volumes: six decimals, the litre's thousandth.
    [[nodiscard]] QString volume(quantity::Volume volume) const;

  private:
    /// Those that the record shows: of appliances only its own, and of a visit that tested no pipework
    /// nothing that a test alone asks for.
    [[nodiscard]] static std::vector<judging::Judged> findingsOf(const DocumentInput& input);
    [[nodiscard]] QString reasonForAbsence(const reg::SubjectRef& on, reg::Item item) const;

    const DocumentInput& m_input;
    const Words& m_words;
    std::vector<judging::Judged> m_findings;
};

/// An item's caption on paper: shorter than on the sheet where the section around it says the rest.
[[nodiscard]] QString recordCaption(const Words& words, reg::Item item);

/// An address in lines: town and postcode on the last.
[[nodiscard]] std::vector<std::string> addressLines(const reg::Address& address);

/// The dash of a table's cell; its reason stands in the table's note.
[[nodiscard]] std::string absentCell();

// document_findings.cpp
[[nodiscard]] record::Headline headline(const DocumentPage& page);
/// Those that `wanted` names, or all.
using Wanted = std::function<bool(const judging::Judged&)>;
[[nodiscard]] record::FindingList findingList(const DocumentPage& page, const Wanted& wanted = {});
void addWhatToDo(const DocumentPage& page, std::vector<record::Block>& blocks);
// document_site.cpp
[[nodiscard]] record::FieldGrid whoAndWhere(const DocumentPage& page);
[[nodiscard]] record::Table instrumentTable(const DocumentPage& page);
[[nodiscard]] record::FieldGrid installationGrid(const DocumentPage& page);
/// Whether records of the kind show the pipework as a sketch, with what was found of its pressure drops.
[[nodiscard]] bool drawsPipes(record::RecordKind kind);
[[nodiscard]] record::Table pipeTable(const DocumentPage& page);
// document_stages.cpp
[[nodiscard]] record::FieldGrid testedGrid(const DocumentPage& page, const reg::Test& test);
[[nodiscard]] record::Table readingTable(const DocumentPage& page, const reg::Test& test);
[[nodiscard]] record::FieldGrid beforeGrid(const DocumentPage& page);
[[nodiscard]] record::FieldGrid purgeGrid(const DocumentPage& page, const reg::Test& test);
[[nodiscard]] record::FieldGrid restoreGrid(const DocumentPage& page, const reg::Test& test);

}  // namespace hearth::ui::words
