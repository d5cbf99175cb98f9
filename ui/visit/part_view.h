// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/visit/part.h"
#include "ui/visit/sheet_field.h"

#include <QWidget>

#include <vector>

class QPushButton;
class QSpacerItem;
class QVBoxLayout;

namespace hearth::ui::shell {
class Fields;
class Text;
}  // namespace hearth::ui::shell

namespace hearth::ui::shell {
class AttachmentsPart;
}

namespace hearth::ui::visit {

/// One part of the sheet: its title, its fields, and room for the notes that stand beside it.
class PartView : public QWidget {
    Q_OBJECT
  public:
    PartView(const SheetContext& context, const PartRef& ref, QWidget* parent);

    [[nodiscard]] const PartRef& ref() const { return m_ref; }
    [[nodiscard]] const std::vector<SheetField*>& fields() const { return m_fields; }
    /// Nothing when the part has no such field.
    [[nodiscard]] SheetField* find(const FieldKey& key) const;
    /// The editor of a field that a record misses; nothing when it stands elsewhere (the firm's own fields).
    [[nodiscard]] virtual input::Editor* editorFor(const FieldKey& key) const;
    /// Beside what a finding of this part stands: the first of its fields that is in view, else the part's
    /// title.
    [[nodiscard]] virtual QWidget* anchorOf(const judging::Judged& judged) const;

    /// What the model holds, in every field.
    virtual void refill();
    /// Shows what follows from the findings: which fields are asked for, live figures, what to do first.
    virtual void refresh();
    /// False when what it was made for has changed so that it has to be made anew.
    [[nodiscard]] virtual bool isUpToDate() const {
        return visit::subjectOf(m_ref, model().file()) == m_subject;
    }
    /// Shows everything that can be entered here, or again only what is asked.
    virtual void toggleMore() {}
    /// Ctrl+Enter in this part: starts or stops its own clock. False: it has none.
    virtual bool toggleClock() { return false; }
    /// Where the keyboard goes when the part is opened.
    virtual void takeFocus();
    virtual void setReadOnly(bool readOnly);

    /// Keeps at least `height` pixels from the part's top free for its notes.
    void setRoomForNotes(int height);

  Q_SIGNALS:
    /// Fields came or went: the order of the Tab key is to be set again.
    void stopsChanged();
    /// A field was answered by one key.
    void answered(input::Editor* editor);
    /// Something that has to be seen now came up (what to do first).
    void urgent(QWidget* what);

  protected:
    [[nodiscard]] const SheetContext& context() const { return m_context; }
    [[nodiscard]] VisitSheetModel& model() const { return m_context.model; }
    [[nodiscard]] const words::Words& words() const { return m_context.window.words; }
    /// The subject of this part's items: its test, its appliance, its situation, or the visit.
    [[nodiscard]] reg::SubjectRef subject() const { return m_subject; }
    /// Whether a field of an item is in view.
    [[nodiscard]] virtual bool isShown(const FieldKey& key) const;
    [[nodiscard]] reg::SubjectRef subjectOf(reg::Item item) const;
    [[nodiscard]] const judging::Judged* finding(rulebook::FindingKind kind) const;

    void setTitle(const QString& title);
    void setSubtitle(const QString& subtitle);
    void addHeading(const QString& text);
    void addWidget(QWidget* widget, Qt::Alignment where = {});
    /// Photographs of the part's subject, a row of `ownerTable`; what is added here can stand in the record.
    shell::AttachmentsPart* addPictures(const char* ownerTable);
    /// A grid of six columns for the next fields.
    [[nodiscard]] shell::Fields* addFields();
    SheetField* addItem(shell::Fields* fields, reg::Item item, int span);
    SheetField* addItemOf(shell::Fields* fields, const reg::SubjectRef& subject, reg::Item item, int span);
    /// An item's field without a label of its own, for a table whose heads stand elsewhere.
    SheetField* makeBareItem(QWidget* parent, reg::Item item);
    SheetField* addField(shell::Fields* fields, SheetField* field, const QString& label, int span);
    SheetField* adopt(SheetField* field);
    /// Forgets the fields of a subject that is gone; their editors are the caller's to delete.
    void drop(const reg::SubjectRef& subject);

  private:
    SheetContext m_context;
    PartRef m_ref;
    reg::SubjectRef m_subject;
    std::vector<SheetField*> m_fields;
    QVBoxLayout* m_lines;
    shell::Text* m_title;
    shell::Text* m_subtitle;
    QSpacerItem* m_room;
};

/// Makes a button one that Enter goes past, as it goes from field to field; Space presses it.
void passByEnter(QPushButton* button);
[[nodiscard]] bool isPassedByEnter(const QObject* widget);
/// Makes it one that Enter does not stop at, since another key does the same from anywhere; Tab reaches it.
void leaveOutByEnter(QWidget* widget);
[[nodiscard]] bool isLeftOutByEnter(const QObject* widget);

/// The title that a part has on the sheet and in the spine.
[[nodiscard]] QString partTitle(const PartRef& ref, const reg::VisitFile& file, const words::Words& words);

}  // namespace hearth::ui::visit
