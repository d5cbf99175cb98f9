// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/visit/part_view.h"

#include <map>

namespace hearth::ui::shell {
class KeyButton;
class LineList;
class Text;
}  // namespace hearth::ui::shell

namespace hearth::ui::visit {

class DraftPages;
class SignaturesBox;

/// Records to issue: which kinds this visit owes, and of the one under the cursor what is missing, each line
/// a way to its field; the issue itself; what was issued; how the page looks.
class RecordsPart : public PartView {
    Q_OBJECT
  public:
    RecordsPart(const SheetContext& context, QWidget* parent);

    void refresh() override;
    void takeFocus() override;
    /// Ctrl+I: issues the record of the kind under the cursor, or a revision where one was issued; says what
    /// is missing where something is.
    void issue();
    /// The same of a kind that the visit owes.
    void issue(record::RecordKind kind);
    /// The kind under the cursor; nothing where the visit owes none.
    [[nodiscard]] std::optional<record::RecordKind> kind() const;
    /// In which language it is issued: what was chosen here, else that of the record that it supersedes, else
    /// what whoever receives it prefers.
    [[nodiscard]] QString language() const;
    [[nodiscard]] input::Editor* languageField() const { return m_language; }
    [[nodiscard]] shell::LineList* kindList() const { return m_kinds; }
    [[nodiscard]] shell::LineList* missingList() const { return m_missing; }
    [[nodiscard]] shell::LineList* recordList() const { return m_records; }

  Q_SIGNALS:
    /// Something missing was chosen.
    void missingChosen(const hearth::record::Missing& missing);

  private:
    void addKinds();
    void addLanguage();
    void addIssue();
    void showKinds();
    void showLanguage();
    [[nodiscard]] QString languageOf(const store::RecordLine& issued) const;
    [[nodiscard]] QString kindName(const store::RecordLine& record) const;
    [[nodiscard]] const std::vector<record::Missing>& missing() const;
    void addVisitButtons();
    void goToNextOwed();
    void showDoubts();
    void showMissing();
    void showRecords();
    void showDraft();
    void toggleDraft();
    void closeVisit();
    void refuse(const QString& sentence);
    [[nodiscard]] std::optional<QString> reasonForRevision(const store::RecordLine& current);

    shell::LineList* m_kinds = nullptr;
    shell::Text* m_state = nullptr;
    shell::Text* m_doubts = nullptr;
    shell::LineList* m_missing = nullptr;
    input::Editor* m_language = nullptr;
    std::map<record::RecordKind, QString> m_chosen;     // languages
    mutable std::map<std::string, QString> m_ofIssued;  // languages by the record's id: it never changes
    SignaturesBox* m_hands = nullptr;
    shell::KeyButton* m_issue = nullptr;
    shell::KeyButton* m_draftButton = nullptr;
    shell::Text* m_refused = nullptr;
    shell::Text* m_recordsHeading = nullptr;
    shell::LineList* m_records = nullptr;
    DraftPages* m_draft = nullptr;
    shell::KeyButton* m_close = nullptr;
};

}  // namespace hearth::ui::visit
