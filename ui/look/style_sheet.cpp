// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/look/look.h"

#include <QList>

#include <utility>

namespace hearth::ui::look {

namespace {

/// Colours stand as @role; put in below. Calm: one-pixel edges, the key colour for the focus, no shadows.
const char kFields[] = R"(
QLineEdit, QPlainTextEdit, QTextEdit, QComboBox, QAbstractSpinBox {
  background: @fieldground; color: @ink; border: 1px solid @fieldedge; border-radius: 3px; padding: 3px 7px;
  selection-background-color: @selection; selection-color: @ink; min-height: 20px; }
QLineEdit:focus, QPlainTextEdit:focus, QTextEdit:focus, QComboBox:focus, QAbstractSpinBox:focus {
  border: 2px solid @focus; padding: 2px 6px; }
QLineEdit:read-only, QPlainTextEdit:read-only, QLineEdit:disabled, QPlainTextEdit:disabled, QComboBox:disabled {
  background: @desk; border-color: @line; }
*[problem="true"] { border-color: @fieldproblem; }
*[problem="true"]:focus { border: 2px solid @fieldproblem; }
QComboBox { padding-right: 22px; }
QComboBox::drop-down { border: none; width: 22px; }
QComboBox::down-arrow { image: none; width: 0; height: 0; margin-right: 6px;
  border-left: 4px solid @fieldground; border-right: 4px solid @fieldground; border-top: 5px solid @softink; }
QComboBox QAbstractItemView { background: @sheet; border: 1px solid @fieldedge; outline: none; }
)";

const char kButtons[] = R"(
QPushButton { background: @sheet; color: @ink; border: 1px solid @fieldedge; border-radius: 3px; padding: 5px 13px;
  min-height: 18px; }
QPushButton:hover { background: @keyground; }
QPushButton:pressed { background: @selection; }
QPushButton:focus { border: 2px solid @focus; padding: 4px 12px; }
QPushButton:disabled { color: @softink; border-color: @line; background: @desk; }
QPushButton[kind="primary"] { background: @key; color: @onkey; border: 1px solid @key; font-weight: bold; }
QPushButton[kind="primary"]:focus { border: 2px solid @ink; }
QPushButton[kind="primary"]:disabled { background: @desk; color: @softink; border-color: @line; }
QPushButton[kind="danger"] { color: @fail; border: 1px solid @fail; font-weight: bold; }
QPushButton[kind="danger"]:hover { background: @failground; }
QPushButton[kind="danger"]:focus { border: 2px solid @fail; }
QPushButton[kind="quiet"] { background: transparent; border: 1px solid transparent; color: @key; }
QPushButton[kind="quiet"]:hover { background: @keyground; }
QPushButton[kind="quiet"]:focus { border: 2px solid @focus; }
QPushButton[kind="quiet"]:disabled { color: @softink; }
QPushButton:checked { background: @keyground; border-color: @key; color: @key; }
QToolButton { background: transparent; color: @ink; border: 1px solid transparent; border-radius: 3px; padding: 4px 8px; }
QToolButton:hover { background: @keyground; }
QToolButton:focus { border: 2px solid @focus; padding: 3px 7px; }
)";

const char kLists[] = R"(
QAbstractItemView { background: @sheet; color: @ink; border: 1px solid @sheetedge; outline: none;
  selection-background-color: @selection; selection-color: @ink; }
QAbstractItemView:focus { border-color: @focus; }
QTableView { gridline-color: @line; }
QTableView::item, QListView::item, QTreeView::item { padding: 4px 8px; border: none; border-bottom: 1px solid @line; }
QTableView::item:selected, QListView::item:selected, QTreeView::item:selected { background: @selection; color: @ink; }
QHeaderView { background: @sheet; border: none; }
QHeaderView::section { background: @sheet; color: @softink; border: none; border-bottom: 1px solid @line; padding: 5px 8px; }
QTableCornerButton::section { background: @sheet; border: none; }
)";

const char kFrames[] = R"(
QToolTip { background: @sheet; color: @ink; border: 1px solid @fieldedge; padding: 4px 6px; }
QMenu { background: @sheet; color: @ink; border: 1px solid @fieldedge; padding: 4px 0; }
QMenu::item { padding: 5px 22px 5px 12px; }
QMenu::item:selected { background: @keyground; color: @ink; }
QMenu::separator { height: 1px; background: @line; margin: 4px 0; }
QScrollArea { border: none; background: transparent; }
QScrollBar { background: transparent; border: none; }
QScrollBar:vertical { width: 11px; }
QScrollBar:horizontal { height: 11px; }
QScrollBar::handle { background: @fieldedge; border-radius: 3px; margin: 2px; }
QScrollBar::handle:vertical { min-height: 28px; }
QScrollBar::handle:horizontal { min-width: 28px; }
QScrollBar::handle:hover { background: @softink; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }
QFrame[ground="desk"], QWidget[ground="desk"] { background: @desk; }
QFrame[ground="sheet"], QWidget[ground="sheet"] { background: @sheet; border: 1px solid @sheetedge; border-radius: 2px; }
QFrame[ground="demo"], QWidget[ground="demo"] { background: @demoband; color: @ondemoband; }
QWidget[ground="demo"] QLabel, QLabel[ground="demo"] { color: @ondemoband; font-weight: bold; }
QLabel { color: @ink; }
QLabel[ink="soft"] { color: @softink; }
QLabel[ink="key"] { color: @key; }
QLabel[ink="pass"] { color: @pass; }
QLabel[ink="fail"] { color: @fail; }
QLabel[ink="look_again"] { color: @lookagain; }
QLabel[ink="no_verdict"] { color: @noverdict; }
QCheckBox:focus, QRadioButton:focus { color: @key; }
QProgressBar { background: @desk; border: 1px solid @line; border-radius: 3px; text-align: center; color: @ink; }
QProgressBar::chunk { background: @key; }
)";

/// Longer names before those that they begin with, so that "@key" does not eat "@keyground".
const QList<std::pair<QString, Role>>& tokens() {
    static const QList<std::pair<QString, Role>> list{
        {QStringLiteral("@fieldground"), Role::FieldGround},
        {QStringLiteral("@fieldedge"), Role::FieldEdge},
        {QStringLiteral("@fieldproblem"), Role::FieldProblem},
        {QStringLiteral("@failground"), Role::FailGround},
        {QStringLiteral("@fail"), Role::Fail},
        {QStringLiteral("@keyground"), Role::KeyGround},
        {QStringLiteral("@key"), Role::Key},
        {QStringLiteral("@ondemoband"), Role::OnDemoBand},
        {QStringLiteral("@onkey"), Role::OnKey},
        {QStringLiteral("@demoband"), Role::DemoBand},
        {QStringLiteral("@desk"), Role::Desk},
        {QStringLiteral("@sheetedge"), Role::SheetEdge},
        {QStringLiteral("@sheet"), Role::Sheet},
        {QStringLiteral("@selection"), Role::Selection},
        {QStringLiteral("@softink"), Role::SoftInk},
        {QStringLiteral("@ink"), Role::Ink},
        {QStringLiteral("@line"), Role::Line},
        {QStringLiteral("@lookagain"), Role::LookAgain},
        {QStringLiteral("@noverdict"), Role::NoVerdict},
        {QStringLiteral("@pass"), Role::Pass},
        {QStringLiteral("@focus"), Role::Focus},
    };
    return list;
}

}  // namespace

QString styleSheet(Scheme scheme) {
    QString sheet = QString::fromLatin1(kFields) + QString::fromLatin1(kButtons) +
                    QString::fromLatin1(kLists) + QString::fromLatin1(kFrames);
    for (const auto& [token, role] : tokens()) {
        sheet.replace(token, colour(role, scheme).name());
    }
    return sheet;
}

}  // namespace hearth::ui::look
