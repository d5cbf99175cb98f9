// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/kit.h"
#include "ui/shell/place.h"

namespace hearth::ui::records {

class PagePreview;
class RecordStory;

/// One issued record: what it is, what can be done with it, its pages. Opening it verifies its digests and
/// its link.
class RecordSheet : public shell::Sheet {
    Q_OBJECT
  public:
    RecordSheet(const shell::Context& context, QWidget* parent);
    void show(store::RecordId id);
    void showNothing();
    void takeFocus();
    [[nodiscard]] std::optional<store::RecordId> shown() const { return m_id; }

  Q_SIGNALS:
    /// A revision was issued: the list has a new record.
    void issued(hearth::store::RecordId id);
    /// It was declared void: the list says so.
    void changed();

  private:
    enum class Print { Original, Copy };
    void addButtons();
    shell::KeyButton* addButton(const QString& text, const QKeySequence& key, const char* name,
                                const std::function<void()>& act);
    void fill(const store::IssuedRecord& record);
    /// One that was let go, or that can't be trusted.
    void showUnreadable(const Error& error);
    void savePdf();
    void print(Print how);
    void revise();
    void issueRevision();
    void send();
    void sendToHolders();
    void declareVoid();
    /// Shows what it is now: something has happened to it.
    void showAgain();
    void addPlaceButtons(QGridLayout* grid);
    void showState(const store::RecordLine& line);
    [[nodiscard]] bool counts() const;
    [[nodiscard]] paper::PageOptions options(Print how) const;

    shell::Context m_context;
    std::optional<store::RecordId> m_id;
    std::optional<store::IssuedRecord> m_record;  // nothing when it can't be trusted
    shell::Text* m_title = nullptr;
    shell::Text* m_subtitle = nullptr;
    shell::Text* m_state = nullptr;
    QWidget* m_buttons = nullptr;
    shell::KeyButton* m_send = nullptr;
    shell::KeyButton* m_save = nullptr;
    shell::KeyButton* m_print = nullptr;
    shell::KeyButton* m_printCopy = nullptr;
    shell::KeyButton* m_revise = nullptr;
    shell::KeyButton* m_tell = nullptr;
    shell::KeyButton* m_void = nullptr;
    RecordStory* m_story = nullptr;
    PagePreview* m_pages = nullptr;
};

}  // namespace hearth::ui::records
