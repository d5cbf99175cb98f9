// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/register/letter_text.h"
#include "ui/shell/kit.h"
#include "ui/shell/place.h"

#include <map>
#include <memory>

namespace hearth::ui::firm {

/// What the firm writes in its letters: the text of each kind, the placeholders that it can use, and the
/// letter as it would go out.
class LettersPart : public QWidget {
    Q_OBJECT
  public:
    LettersPart(const shell::Context& context, QWidget* parent);
    ~LettersPart() override;
    void refresh();

  private:
    void makeKinds(QVBoxLayout* lines);
    void makeText(QVBoxLayout* lines);
    void showKind(reg::LetterKind kind);
    [[nodiscard]] QString shipped() const;
    [[nodiscard]] Result<void> keep(const QString& text);
    void showPreview();
    void backToShipped();
    /// The letter's values for one of the demonstration's premises, with this firm's own name and numbers.
    [[nodiscard]] reg::LetterValues sample() const;

    shell::Context m_context;
    reg::LetterKind m_kind = reg::LetterKind::Reminder;
    std::unique_ptr<words::Words> m_inRecord;      // in the language of the firm's records
    std::map<reg::LetterKind, QString> m_refused;  // what was typed and could not be kept
    input::Editor* m_kinds;
    input::Editor* m_text;
    shell::Text* m_placeholders;
    shell::Text* m_state;
    shell::Text* m_preview;
    shell::KeyButton* m_back;
};

}  // namespace hearth::ui::firm
