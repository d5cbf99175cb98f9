// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/firm/bin_part.h"

#include "ui/shell/line_list.h"

#include <map>

namespace hearth::ui::firm {

using words::qstring;

namespace {

QString kindOf(const std::string& table) {
    static const std::map<std::string, const char*> kKinds{
        {"parties", QT_TRANSLATE_NOOP("hearth::ui::firm::BinPart", "person or organisation")},
        {"premises", QT_TRANSLATE_NOOP("hearth::ui::firm::BinPart", "premises")},
        {"installations", QT_TRANSLATE_NOOP("hearth::ui::firm::BinPart", "gas installation")},
        {"appliances", QT_TRANSLATE_NOOP("hearth::ui::firm::BinPart", "appliance")},
        {"engineers", QT_TRANSLATE_NOOP("hearth::ui::firm::BinPart", "engineer")},
        {"instruments", QT_TRANSLATE_NOOP("hearth::ui::firm::BinPart", "instrument")},
        {"competences", QT_TRANSLATE_NOOP("hearth::ui::firm::BinPart", "category of work")},
        {"visits", QT_TRANSLATE_NOOP("hearth::ui::firm::BinPart", "visit")},
        {"access_attempts", QT_TRANSLATE_NOOP("hearth::ui::firm::BinPart", "attempt to get in")},
        {"letters", QT_TRANSLATE_NOOP("hearth::ui::firm::BinPart", "letter")},
        {"bookings", QT_TRANSLATE_NOOP("hearth::ui::firm::BinPart", "booking")},
        {"situations", QT_TRANSLATE_NOOP("hearth::ui::firm::BinPart", "unsafe situation")},
        {"attachments", QT_TRANSLATE_NOOP("hearth::ui::firm::BinPart", "picture or paper")},
    };
    const auto kind = kKinds.find(table);
    return kind == kKinds.end() ? qstring(table) : BinPart::tr(kind->second);
}

}  // namespace

BinPart::BinPart(const shell::Context& context, QWidget* parent)
    : QWidget(parent),
      m_context(context),
      m_list(new shell::LineList(tr("The bin"), tr("The bin is empty."), this)),
      m_back(new shell::KeyButton(tr("Bring it back"), shell::ButtonKind::Plain, this)),
      m_remove(new shell::KeyButton(tr("Remove it for good"), shell::ButtonKind::Quiet, this)) {
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(look::kGap);
    lines->addWidget(shell::headingText(tr("The bin"), this));
    m_list->setObjectName(QStringLiteral("binList"));
    m_list->setGrowing(true);
    lines->addWidget(m_list);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(look::kGap);
    m_back->setObjectName(QStringLiteral("bringBackButton"));
    m_remove->setObjectName(QStringLiteral("removeForGoodButton"));
    buttons->addWidget(m_back);
    buttons->addWidget(m_remove);
    buttons->addStretch(1);
    lines->addLayout(buttons);
    connect(m_list, &shell::LineList::opened, this, &BinPart::bringBack);
    connect(m_back, &QPushButton::clicked, this, &BinPart::bringBack);
    connect(m_remove, &QPushButton::clicked, this, &BinPart::removeForGood);
}

void BinPart::refresh() {
    const auto binned = m_context.store.bin();
    m_binned = binned.value_or(std::vector<reg::Binned>());
    m_list->setEmptyText(binned ? tr("The bin is empty.") : m_context.words.error(binned.error()));
    std::vector<shell::Line> lines;
    for (const auto& thing : m_binned) {
        shell::Line line;
        line.key = qstring(thing.id.text());
        line.title = qstring(thing.label);
        line.detail = kindOf(thing.table);
        line.right = shell::dayOf(m_context.words, thing.at);
        line.rightDetail = qstring(thing.by);
        lines.push_back(std::move(line));
    }
    m_list->setLines(std::move(lines));
    const bool any = !m_binned.empty();
    m_back->setVisible(any);
    m_remove->setVisible(any);
    m_back->setEnabled(!m_context.store.isReadOnly());
    m_remove->setEnabled(!m_context.store.isReadOnly());
}

const reg::Binned* BinPart::current() const {
    const int row = m_list->currentRow();
    return row < 0 ? nullptr : &m_binned.at(static_cast<std::size_t>(row));
}

void BinPart::bringBack() {
    const auto* thing = current();
    if (thing == nullptr || m_context.store.isReadOnly()) {
        return;
    }
    const QString label = qstring(thing->label);
    if (const auto done = m_context.store.bringBack(thing->id); !done) {
        m_context.dialogs.tell(this, tr("It was not brought back"), m_context.words.error(done.error()));
        return;
    }
    refresh();
    m_context.navigator.say(tr("%1 is back where it was.").arg(label));
}

void BinPart::removeForGood() {
    const auto* thing = current();
    if (thing == nullptr) {
        return;
    }
    constexpr int kKeep = 0;
    constexpr int kRemove = 1;
    const int answer = m_context.dialogs.ask(
        this, tr("Remove %1 for good?").arg(qstring(thing->label)),
        tr("It goes with everything that hangs on it, and nothing brings it back but a backup."),
        {tr("Keep it in the bin"), tr("Remove it")}, kKeep);
    if (answer != kRemove) {
        return;
    }
    if (const auto done = m_context.store.removeForGood(thing->id); !done) {
        m_context.dialogs.tell(this, tr("It was not removed"), m_context.words.error(done.error()));
        return;
    }
    refresh();
    m_context.navigator.say(tr("Removed."));
}

}  // namespace hearth::ui::firm
