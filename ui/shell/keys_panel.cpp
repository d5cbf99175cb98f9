// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/keys_panel.h"

#include "ui/shell/kit.h"

#include <QCoreApplication>

#include <vector>

namespace hearth::ui::shell {

namespace {

struct Keys {
    QString keys;
    QString what;
};

/// All keys that mean the same everywhere. The places show theirs on their buttons.
std::vector<Keys> everywhere() {
    const auto text = [](const char* source) {
        return QCoreApplication::translate("hearth::ui::shell::KeysPanel", source);
    };
    return {
        {QStringLiteral("F12"),
         text(QT_TRANSLATE_NOOP("hearth::ui::shell::KeysPanel",
                                "what to do first: smell, failed test, carbon monoxide"))},
        {QStringLiteral("Ctrl+F"),
         text(QT_TRANSLATE_NOOP("hearth::ui::shell::KeysPanel",
                                "find anything; Down goes to what was found, Enter opens the first"))},
        {QStringLiteral("Enter"),
         text(QT_TRANSLATE_NOOP(
             "hearth::ui::shell::KeysPanel",
             "keep the field and go to the next; in a list, open; on a sheet with Shift, back"))},
        {QStringLiteral("Tab"),
         text(QT_TRANSLATE_NOOP("hearth::ui::shell::KeysPanel", "next field; with Shift, the one before"))},
        {QStringLiteral("Ctrl+Z"),
         text(QT_TRANSLATE_NOOP("hearth::ui::shell::KeysPanel",
                                "take back: in a field what was just typed, else the last change kept"))},
        {QStringLiteral("Ctrl+N"),
         text(QT_TRANSLATE_NOOP("hearth::ui::shell::KeysPanel", "start a visit at the premises in view"))},
        {QStringLiteral("Ctrl+Shift+N"),
         text(QT_TRANSLATE_NOOP("hearth::ui::shell::KeysPanel", "new premises"))},
        {QStringLiteral("Ctrl+Shift+I"),
         text(QT_TRANSLATE_NOOP("hearth::ui::shell::KeysPanel", "at the premises: take over a spreadsheet"))},
        {QStringLiteral("Ctrl+Shift+E"),
         text(QT_TRANSLATE_NOOP("hearth::ui::shell::KeysPanel", "write the lists of a place as a file"))},
        {QStringLiteral("Esc"),
         text(QT_TRANSLATE_NOOP("hearth::ui::shell::KeysPanel",
                                "close what lies over the place; from a sheet, back to its list"))},
        {QStringLiteral("Ctrl+K"),
         text(QT_TRANSLATE_NOOP("hearth::ui::shell::KeysPanel", "on a sheet: to its parts or questions"))},
        {QStringLiteral("Ctrl+M"),
         text(QT_TRANSLATE_NOOP("hearth::ui::shell::KeysPanel", "on a sheet: to what is found, and back"))},
        {QStringLiteral("Ctrl+Enter"),
         text(QT_TRANSLATE_NOOP("hearth::ui::shell::KeysPanel",
                                "on a sheet: start or stop its clock; keep the time of a reading"))},
        {QStringLiteral("Right"), text(QT_TRANSLATE_NOOP("hearth::ui::shell::KeysPanel",
                                                         "in an empty field: take what stands in grey"))},
        {QStringLiteral("F1"), text(QT_TRANSLATE_NOOP("hearth::ui::shell::KeysPanel",
                                                      "on a finding: its source; elsewhere: these keys"))},
        {QStringLiteral("Shift+F1"),
         text(QT_TRANSLATE_NOOP("hearth::ui::shell::KeysPanel", "on a finding: its limit in the rule book"))},
        {QStringLiteral("Alt+Down"),
         text(QT_TRANSLATE_NOOP("hearth::ui::shell::KeysPanel", "in a field with a unit: other units"))},
        {QStringLiteral("Ctrl++, Ctrl+\u2212"),
         text(QT_TRANSLATE_NOOP("hearth::ui::shell::KeysPanel",
                                "larger or smaller letters from the next start on; Ctrl+0, the desktop's"))},
        {QStringLiteral("Ctrl+Q"), text(QT_TRANSLATE_NOOP("hearth::ui::shell::KeysPanel",
                                                          "close the window; everything is kept already"))},
    };
}

}  // namespace

KeysPanel::KeysPanel(const QStringList& places, QWidget* parent) : Panel(parent) {
    setObjectName(QStringLiteral("keysPanel"));
    setAccessibleName(tr("Keys"));
    lines()->addWidget(titleText(tr("Keys"), this));
    auto* table = new QWidget(this);
    auto* grid = new QGridLayout(table);
    grid->setContentsMargins(0, look::kGap, 0, look::kGap);
    grid->setHorizontalSpacing(3 * look::kGap);
    grid->setVerticalSpacing(look::kGap);
    grid->setColumnStretch(1, 1);
    grid->setColumnStretch(3, 1);
    std::vector<Keys> all;
    for (const QString& place : places) {
        all.push_back({QStringLiteral("Ctrl+%1").arg(all.size() + 1), place});
    }
    const std::vector<Keys> more = everywhere();
    all.insert(all.end(), more.begin(), more.end());
    // Two columns, so that the smallest window shows all of them.
    const int half = static_cast<int>(all.size() + 1) / 2;
    int at = 0;
    for (const auto& [keys, what] : all) {
        auto* key = new Text(keys, look::TypeRole::Body, look::Role::Key, table);
        key->setFont(strongFont());
        const int column = at < half ? 0 : 2;
        grid->addWidget(key, at % half, column, Qt::AlignTop);
        grid->addWidget(bodyText(what, table), at % half, column + 1, Qt::AlignTop);
        ++at;
    }
    lines()->addWidget(table);
    m_close = closeButton();
    lines()->addWidget(m_close, 0, Qt::AlignLeft);
    lines()->addStretch(1);
}

void KeysPanel::takeFocus() {
    m_close->setFocus(Qt::OtherFocusReason);
}

}  // namespace hearth::ui::shell
