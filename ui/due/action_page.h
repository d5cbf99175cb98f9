// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/due.h"
#include "ui/shell/flow_layout.h"
#include "ui/shell/kit.h"
#include "ui/shell/place.h"

#include <QString>
#include <QWidget>

#include <optional>
#include <vector>

namespace hearth::ui::due {

/// What the pages of this place are made with.
struct DueContext {
    shell::Context shell;
    store::Due& due;
    [[nodiscard]] calendar::Date today() const { return shell.clock.today("Europe/London"); }
};

/// A sheet over the list for something that is done with one premises or many. Escape leaves it, and nothing
/// is done.
class ActionPage : public QWidget {
    Q_OBJECT
  public:
    ActionPage(const DueContext& context, const QString& title, QWidget* parent);
    /// Where the keyboard starts.
    virtual void takeFocus() = 0;
    /// The field under the cursor, when the place is left.
    virtual void commit() { shell::commitField(this); }

  Q_SIGNALS:
    /// Empty: nothing was done; else what was, for the line at the foot.
    void closed(const QString& done);

  protected:
    [[nodiscard]] const DueContext& context() const { return m_context; }
    [[nodiscard]] QVBoxLayout* lines() const { return m_sheet->lines(); }
    void setHead(const QString& title, const QString& below = {});
    shell::KeyButton* addButton(const QString& text, const char* name, const QKeySequence& key,
                                shell::ButtonKind kind, const std::function<void()>& act);
    /// The buttons and a way back, at the sheet's end; after the fields.
    void endPage();
    void finish(const QString& done) { Q_EMIT closed(done); }
    void tell(const QString& title, const Error& error);
    void keyPressEvent(QKeyEvent* event) override;

  private:
    DueContext m_context;
    shell::Sheet* m_sheet;
    shell::Text* m_title;
    shell::Text* m_below;
    shell::FlowLayout* m_buttons;
};

/// Somebody who holds a role at premises, for a choice.
struct Reachable {
    reg::Party party;
    reg::RoleKind role = reg::RoleKind::Landlord;
};
/// Everybody with a role at any of these premises, each once; of many premises the first 50.
[[nodiscard]] std::vector<Reachable> reachableAt(const store::Store& store,
                                                 const std::vector<reg::PremisesId>& premises);

/// "14 Tallow Lane", or "14 Tallow Lane and 3 more".
[[nodiscard]] QString premisesText(const store::Store& store, const std::vector<reg::PremisesId>& premises);

}  // namespace hearth::ui::due
