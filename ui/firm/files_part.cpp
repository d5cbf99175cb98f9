// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/firm/files_part.h"

#include "ui/shell/exporting.h"

namespace hearth::ui::firm {

FilesPart::FilesPart(const shell::Context& context, QWidget* parent) : QWidget(parent), m_context(context) {
    using exchange::ListKind;
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(look::kGap);
    lines->addWidget(shell::headingText(tr("Files to take along"), this));
    lines->addWidget(shell::softText(
        tr("Lists are for spreadsheets. Everything goes into one file of an open format (JSON), "
           "of which an equal store can be made: it holds all that is private too, so keep it safe."),
        this));
    auto* row = new QHBoxLayout;
    row->setSpacing(look::kGap);
    row->addWidget(shell::exportButton({ListKind::Engineers, ListKind::Instruments, ListKind::Changes},
                                       m_context, this));
    auto* everything = new shell::KeyButton(tr("Write everything as JSON"), shell::ButtonKind::Plain, this);
    everything->setObjectName(QStringLiteral("exportEverythingButton"));
    row->addWidget(everything);
    row->addStretch(1);
    lines->addLayout(row);
    connect(everything, &QPushButton::clicked, this, &FilesPart::writeEverything);
}

void FilesPart::writeEverything() {
    const QString day = words::qstring(calendar::isoText(m_context.clock.today("Europe/London")));
    const auto path =
        m_context.dialogs.saveFile(this, tr("Write everything as JSON"),
                                   tr("hearthledger everything %1.json").arg(day), tr("JSON (*.json)"));
    if (!path) {
        return;
    }
    const auto written = shell::writeWholeStore(m_context.store, m_context.clock, *path);
    if (!written) {
        m_context.dialogs.tell(this, tr("The file was not written"), m_context.words.error(written.error()));
        return;
    }
    m_context.navigator.say(tr("Written to %1.").arg(*path));
}

}  // namespace hearth::ui::firm
