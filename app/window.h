// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/store/store.h"
#include "ui/look/look.h"
#include "ui/shell/main_window.h"
#include "ui/words/words.h"

#include <memory>

class QApplication;
class QTranslator;

/// The window with its places. Where program, gallery, benchmark and the tests of faults get it, so that all
/// have the same.
namespace hearth::app {

/// What a window speaks with and to; all of it must outlive the window.
struct Surroundings {
    const Clock& clock;
    const ui::words::Words& words;
    ui::shell::Dialogs& dialogs;
    ui::paper::Printing& printing;
    ui::look::Scheme scheme = ui::look::Scheme::Light;
    QSettings* settings = nullptr;
    ui::shell::Restore restore = {};
    ui::shell::Notifying* notifying = nullptr;
};

/// The main window on a store with all places in their order; the first is in view.
[[nodiscard]] std::unique_ptr<ui::shell::MainWindow> makeMainWindow(store::Store& store,
                                                                    const Surroundings& surroundings);

/// Palette, style sheet and type of a scheme for the whole program.
void applyLook(QApplication& application, ui::look::Scheme scheme);

/// Makes tr() speak the language for as long as it lives: English plural forms, or the pseudo-locale en_XA.
class WindowLanguage {
  public:
    explicit WindowLanguage(const QString& language);
    ~WindowLanguage();
    WindowLanguage(const WindowLanguage&) = delete;
    WindowLanguage& operator=(const WindowLanguage&) = delete;

  private:
    std::unique_ptr<QTranslator> m_english;
    std::unique_ptr<QTranslator> m_pseudo;
};

}  // namespace hearth::app
