// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/kit.h"
#include "ui/shell/place.h"

#include <QSet>

namespace hearth::ui::shell {
class LineList;
}

namespace hearth::ui::firm {

/// Records and letters whose keeping is over: looked through once a year, held with a reason, or let go after
/// a question.
class KeepingPart : public QWidget {
    Q_OBJECT
  public:
    KeepingPart(const shell::Context& context, QWidget* parent);
    void refresh();

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    QWidget* makeButtons();
    void fitList();
    void showState();
    void showButtons();
    void showCurrent();
    void open();
    void toggleMark();
    void markAll();
    void hold();
    void letGo();
    void lookedThrough();
    void refuse(const Error& error);
    /// The record or letter in the line under the cursor; the other one, or both, are nothing.
    [[nodiscard]] const store::MayGo* currentRecord() const;
    [[nodiscard]] const store::LetterMayGo* currentLetter() const;
    [[nodiscard]] store::LettingGo marked() const;

    shell::Context m_context;
    std::vector<store::MayGo> m_records;
    std::vector<store::LetterMayGo> m_letters;
    QSet<QString> m_marked;  // keys of lines
    shell::Text* m_state;
    shell::LineList* m_list;
    shell::Text* m_about;
    shell::KeyButton* m_mark = nullptr;
    shell::KeyButton* m_markAll = nullptr;
    shell::KeyButton* m_hold = nullptr;
    shell::KeyButton* m_letGo = nullptr;
    shell::KeyButton* m_looked = nullptr;
};

}  // namespace hearth::ui::firm
