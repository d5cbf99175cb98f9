// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/kit.h"
#include "ui/shell/place.h"

namespace hearth::ui::firm {

/// The firm's own key: made and renewed, unlocked for this run, what waits signed, its public half handed
/// out; and what the files of records are called.
class SigningPart : public QWidget {
    Q_OBJECT
  public:
    SigningPart(const shell::Context& context, QWidget* parent);
    void refresh();

  private:
    QWidget* makeButtons();
    void addPattern(QVBoxLayout* lines);
    void makeKey();
    void unlockOrLock();
    void signWaiting();
    void saveKey();
    void printKey();
    /// Asks for the newest key's passphrase and opens it for this run.
    bool unlock();
    [[nodiscard]] std::optional<QString> askNewPassphrase();
    [[nodiscard]] Result<void> keepPattern(const QString& typed);
    void tellFailed(const Error& error);

    shell::Context m_context;
    shell::Text* m_state;
    shell::Text* m_keys;
    shell::KeyButton* m_make = nullptr;
    shell::KeyButton* m_unlock = nullptr;
    shell::KeyButton* m_sign = nullptr;
    shell::KeyButton* m_save = nullptr;
    shell::KeyButton* m_print = nullptr;
    input::Editor* m_pattern = nullptr;
};

}  // namespace hearth::ui::firm
