// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/firm/keeping_part.h"

#include "ui/shell/keeping_due.h"
#include "ui/shell/line_list.h"

#include <algorithm>

namespace hearth::ui::firm {

using words::qstring;

namespace {

constexpr int kMostShown = 500;

QString addressText(const reg::Address& address) {
    QStringList parts{qstring(address.line1), qstring(address.line2), qstring(address.town),
                      qstring(address.postcode)};
    parts.removeAll(QString());
    return parts.join(QStringLiteral(", "));
}

QString issuedOn(const store::MayGo& one, const words::Words& words) {
    Instant at{};
    return parseInstant(one.record.header.issuedAt, at) ? shell::dayOf(words, at)
                                                        : qstring(one.record.header.issuedAt);
}

QString keyOf(const store::MayGo& one) {
    return qstring(one.record.id.text());
}
QString keyOf(const store::LetterMayGo& one) {
    return qstring(one.letter.id.text());
}

shell::Line lineOf(const store::MayGo& one, const words::Words& words, bool isMarked) {
    const auto& header = one.record.header;
    const auto kind = record::kindFromCode(header.kind);
    shell::Line line;
    line.key = keyOf(one);
    line.title = header.revision > 1
                     ? KeepingPart::tr("%1, revision %2").arg(qstring(header.record)).arg(header.revision)
                     : qstring(header.record);
    line.detail = KeepingPart::tr("%1 · %2 · issued %3")
                      .arg(kind ? words.recordKind(*kind) : qstring(header.kind), qstring(one.record.address),
                           issuedOn(one, words));
    line.right = KeepingPart::tr("kept until %1").arg(words.shortDate(one.keptUntil));
    line.rightDetail = one.hold   ? KeepingPart::tr("held")
                       : isMarked ? KeepingPart::tr("marked to go")
                                  : QString();
    return line;
}

shell::Line lineOf(const store::LetterMayGo& one, const words::Words& words, bool isMarked) {
    shell::Line line;
    line.key = keyOf(one);
    line.title =
        one.to.empty() ? KeepingPart::tr("Letter") : KeepingPart::tr("Letter to %1").arg(qstring(one.to));
    line.detail =
        KeepingPart::tr("%1 · sent %2").arg(addressText(one.address), shell::dayOf(words, one.letter.at));
    line.right = KeepingPart::tr("kept until %1").arg(words.shortDate(one.keptUntil));
    line.rightDetail = isMarked ? KeepingPart::tr("marked to go") : QString();
    return line;
}

QString ruleText(record::KeepRule rule) {
    switch (rule) {
        case record::KeepRule::SixYears:
            break;
        case record::KeepRule::FifteenYears:
            return KeepingPart::tr(
                "Kept for fifteen years, since it goes with what stays in use. No law says how long; fifteen "
                "years are common practice, since a claim of negligence may be made for so long (Limitation "
                "Act 1980).");
    }
    return KeepingPart::tr(
        "Kept for six years. No law says how long; six years are common practice, since a claim may be made "
        "for so long (Limitation Act 1980).");
}

}  // namespace

KeepingPart::KeepingPart(const shell::Context& context, QWidget* parent)
    : QWidget(parent),
      m_context(context),
      m_state(shell::bodyText({}, this)),
      m_list(new shell::LineList(tr("What may go"), {}, this)),
      m_about(shell::softText({}, this)) {
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(look::kGap);
    lines->addWidget(shell::headingText(tr("What may go"), this));
    m_state->setObjectName(QStringLiteral("keepingState"));
    lines->addWidget(m_state);
    m_list->setObjectName(QStringLiteral("keepingList"));
    m_list->setGrowing(true);
    m_list->setVerticalScrollBarPolicy(Qt::ScrollBarAsNeeded);
    m_list->installEventFilter(this);
    lines->addWidget(m_list);
    m_about->setObjectName(QStringLiteral("keepingAbout"));
    lines->addWidget(m_about);
    lines->addWidget(makeButtons());
    connect(m_list, &shell::LineList::moved, this, &KeepingPart::showCurrent);
    connect(m_list, &shell::LineList::opened, this, &KeepingPart::open);
}

QWidget* KeepingPart::makeButtons() {
    auto* box = new QWidget(this);
    auto* rows = new QVBoxLayout(box);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(look::kGap);
    QHBoxLayout* row = nullptr;
    const auto begin = [&] {
        row = new QHBoxLayout;
        row->setSpacing(look::kGap);
        row->addStretch(1);
        rows->addLayout(row);
    };
    const auto add = [&](const QString& text, shell::ButtonKind kind, const char* name,
                         void (KeepingPart::*press)()) {
        auto* button = new shell::KeyButton(text, kind, box);
        button->setObjectName(QString::fromLatin1(name));
        row->insertWidget(row->count() - 1, button);
        connect(button, &QPushButton::clicked, this, press);
        return button;
    };
    begin();
    m_mark = add(tr("Mark"), shell::ButtonKind::Plain, "keepingMarkButton", &KeepingPart::toggleMark);
    m_mark->showKey(QKeySequence(Qt::Key_Space).toString(QKeySequence::NativeText));
    m_markAll = add(tr("Mark all"), shell::ButtonKind::Plain, "keepingMarkAllButton", &KeepingPart::markAll);
    m_hold = add(tr("Hold it…"), shell::ButtonKind::Plain, "keepingHoldButton", &KeepingPart::hold);
    begin();
    m_letGo =
        add(tr("Let go of what is marked…"), shell::ButtonKind::Plain, "letGoButton", &KeepingPart::letGo);
    m_looked = add(tr("Looked through for this year"), shell::ButtonKind::Quiet, "keepingLookedButton",
                   &KeepingPart::lookedThrough);
    return box;
}

void KeepingPart::refresh() {
    const auto today = m_context.clock.today("Europe/London");
    const auto records = m_context.store.mayGo(today, kMostShown);
    const auto letters = m_context.store.lettersMayGo(today, kMostShown);
    m_records = records.value_or(std::vector<store::MayGo>());
    m_letters = letters.value_or(std::vector<store::LetterMayGo>());
    QSet<QString> still;
    std::vector<shell::Line> lines;
    const auto show = [&](const auto& one, bool mayGo) {
        const bool isMarked = mayGo && m_marked.contains(keyOf(one));
        if (isMarked) {
            still.insert(keyOf(one));
        }
        lines.push_back(lineOf(one, m_context.words, isMarked));
    };
    for (const auto& one : m_records) {
        show(one, !one.hold);
    }
    for (const auto& one : m_letters) {
        show(one, true);
    }
    m_marked = still;
    m_list->setLines(std::move(lines));
    fitList();
    if (records && letters) {
        showState();
    } else {
        m_state->setInk(look::Role::Fail);
        m_state->setText(m_context.words.error(records ? letters.error() : records.error()));
    }
    showButtons();
    showCurrent();
}

/// As high as its lines, up to so many: what can be done with them stays in view below.
void KeepingPart::fitList() {
    constexpr int kMostLines = 6;
    const int count = m_list->count();
    const int high = m_list->sizeHint().height();
    m_list->setFixedHeight(count > kMostLines ? high * kMostLines / count : high);
    m_list->setVisible(count > 0);
}

void KeepingPart::showState() {
    const auto lookedOn = shell::keepingLookedOn(m_context.store);
    const QString looked = lookedOn
                               ? tr("Looked through last on %1.").arg(m_context.words.shortDate(*lookedOn))
                               : tr("It has not been looked through yet.");
    m_state->setInk(look::Role::Ink);
    if (m_list->count() == 0) {
        m_state->setText(tr("Nothing has been kept for longer than it must be."));
        return;
    }
    QStringList said;
    said << tr("Personal data is kept no longer than it is needed. These have been kept for long enough: "
               "records: %1, letters: %2.")
                .arg(m_records.size())
                .arg(m_letters.size());
    if (static_cast<int>(std::max(m_records.size(), m_letters.size())) == kMostShown) {
        said << tr("The oldest are shown; there may be others.");
    }
    if (shell::isKeepingLookDue(lookedOn, m_context.clock.today("Europe/London"))) {
        m_state->setInk(look::Role::LookAgain);
        said << tr("Look through them once a year.");
    }
    said << looked;
    m_state->setText(said.join(u' '));
}

void KeepingPart::showButtons() {
    const bool any = m_list->count() > 0;
    const bool mayWrite = !m_context.store.isReadOnly();
    for (auto* button : {m_mark, m_markAll, m_hold, m_letGo, m_looked}) {
        button->setVisible(any);
        button->setEnabled(mayWrite);
    }
    m_letGo->setEnabled(mayWrite && !m_marked.isEmpty());
    const bool allMarked =
        any &&
        std::all_of(m_records.begin(), m_records.end(),
                    [&](const auto& one) { return one.hold || m_marked.contains(keyOf(one)); }) &&
        std::all_of(m_letters.begin(), m_letters.end(),
                    [&](const auto& one) { return m_marked.contains(keyOf(one)); });
    m_markAll->setWords(allMarked ? tr("Mark none") : tr("Mark all"));
}

void KeepingPart::showCurrent() {
    const auto* record = currentRecord();
    const auto* letter = currentLetter();
    const bool mayWrite = !m_context.store.isReadOnly();
    m_mark->setEnabled(mayWrite && ((record != nullptr && !record->hold) || letter != nullptr));
    m_mark->setWords(m_marked.contains(m_list->currentKey()) ? tr("Don't mark") : tr("Mark"));
    m_hold->setEnabled(mayWrite && record != nullptr);
    m_hold->setWords(record != nullptr && record->hold ? tr("Lift the hold") : tr("Hold it…"));
    QString about;
    if (record != nullptr && record->hold) {
        const auto& hold = *record->hold;
        const QString since = shell::dayOf(m_context.words, hold.at);
        about = hold.by.empty()
                    ? tr("Held since %1: %2").arg(since, qstring(hold.reason))
                    : tr("Held since %1 by %2: %3").arg(since, qstring(hold.by), qstring(hold.reason));
    } else if (record != nullptr) {
        about = ruleText(record->rule);
    } else if (letter != nullptr) {
        about =
            tr("A letter is kept as long as the record that it goes with: it shows that somebody was told. "
               "That it was sent, when and of what kind stays.");
    }
    m_about->setText(about);
    m_about->setVisible(!about.isEmpty());
}

bool KeepingPart::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->key() == Qt::Key_Space && key->modifiers() == Qt::NoModifier) {
            toggleMark();
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

const store::MayGo* KeepingPart::currentRecord() const {
    const auto row = static_cast<std::size_t>(m_list->currentRow());
    return m_list->currentRow() >= 0 && row < m_records.size() ? &m_records[row] : nullptr;
}

const store::LetterMayGo* KeepingPart::currentLetter() const {
    const auto row = static_cast<std::size_t>(m_list->currentRow());
    return m_list->currentRow() >= 0 && row >= m_records.size() ? &m_letters.at(row - m_records.size())
                                                                : nullptr;
}

void KeepingPart::open() {
    if (const auto* record = currentRecord()) {
        m_context.navigator.openRecord(record->record.id);
    } else if (const auto* letter = currentLetter()) {
        m_context.navigator.openPremises(letter->letter.premises);
    }
}

void KeepingPart::toggleMark() {
    if (!m_mark->isEnabled()) {
        if (const auto* record = currentRecord(); record != nullptr && record->hold) {
            m_context.navigator.say(tr("It is held: lift the hold first."));
        }
        return;
    }
    const QString key = m_list->currentKey();
    if (!m_marked.remove(key)) {
        m_marked.insert(key);
    }
    refresh();
}

void KeepingPart::markAll() {
    QSet<QString> all;
    for (const auto& one : m_records) {
        if (!one.hold) {
            all.insert(keyOf(one));
        }
    }
    for (const auto& one : m_letters) {
        all.insert(keyOf(one));
    }
    m_marked = m_marked == all ? QSet<QString>() : all;
    refresh();
}

void KeepingPart::hold() {
    const auto* record = currentRecord();
    if (record == nullptr) {
        return;
    }
    const QString number = qstring(record->record.header.record);
    if (record->hold) {
        if (const auto done = m_context.store.liftHold(record->record.id); !done) {
            refuse(done.error());
            return;
        }
        refresh();
        m_context.navigator.say(tr("%1 is held no longer.").arg(number));
        return;
    }
    const auto reason = m_context.dialogs.askText(this, tr("Hold %1").arg(number),
                                                  tr("Why it is kept for longer (a dispute, a claim)"));
    if (!reason) {
        return;
    }
    if (const auto done = m_context.store.hold(record->record.id, reason->toStdString()); !done) {
        refuse(done.error());
        return;
    }
    refresh();
    m_context.navigator.say(tr("%1 is held with all its revisions until the hold is lifted.").arg(number));
}

store::LettingGo KeepingPart::marked() const {
    store::LettingGo what;
    for (const auto& one : m_records) {
        if (m_marked.contains(keyOf(one))) {
            what.records.push_back(one.record.id);
        }
    }
    for (const auto& one : m_letters) {
        if (m_marked.contains(keyOf(one))) {
            what.letters.push_back(one.letter.id);
        }
    }
    return what;
}

void KeepingPart::letGo() {
    const auto what = marked();
    constexpr int kKeep = 0;
    constexpr int kGo = 1;
    const int answer = m_context.dialogs.ask(
        this, tr("Let go of what is marked?"),
        tr("Records: %1 · letters: %2. What they say and their pages are erased, and nothing brings that "
           "back. "
           "Numbers, dates and digests stay, and so does that they went, when and by whom.\n\n"
           "Backups made before now keep copies until they have been replaced by newer ones, the monthly "
           "ones "
           "for a year; copies that were saved or handed out stay where they are.")
            .arg(what.records.size())
            .arg(what.letters.size()),
        {tr("Keep them"), tr("Let them go")}, kKeep);
    if (answer != kGo) {
        return;
    }
    if (const auto done = m_context.store.letGo(what); !done) {
        refuse(done.error());
        return;
    }
    m_marked.clear();
    m_context.navigator.say(tr("They are gone; their numbers stay."));
    lookedThrough();
}

void KeepingPart::lookedThrough() {
    if (const auto noted = shell::noteKeepingLook(m_context.store, m_context.clock); !noted) {
        m_context.dialogs.tell(this, tr("It was not noted"), m_context.words.error(noted.error()));
    }
    refresh();
}

void KeepingPart::refuse(const Error& error) {
    m_context.dialogs.tell(this, tr("Everything is as it was"), m_context.words.error(error));
    refresh();
}

}  // namespace hearth::ui::firm
