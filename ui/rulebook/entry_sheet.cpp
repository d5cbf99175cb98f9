// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/rulebook/entry_sheet.h"

#include "core/rulebook/firm_value.h"
#include "ui/rulebook/bands_form.h"
#include "ui/shell/line_list.h"
#include "ui/shell/rule_answer.h"
#include "ui/shell/value_fields.h"

namespace hearth::ui::rules {

using rulebook::Comparison;
using rulebook::Entry;
using rulebook::ValueShape;
using words::qstring;

namespace {

QString comparisonWords(Comparison comparison) {
    switch (comparison) {
        case Comparison::AtMost:
            return EntrySheet::tr("passes at it and below");
        case Comparison::Below:
            return EntrySheet::tr("passes below it, not at it");
        case Comparison::AtLeast:
            return EntrySheet::tr("passes at it and above");
        case Comparison::Within:
            return EntrySheet::tr("passes within it, both ends included");
        case Comparison::Equals:
            return EntrySheet::tr("has to be exactly this");
        case Comparison::AsGiven:
            return EntrySheet::tr("is reckoned with, not compared");
    }
    return {};
}

}  // namespace

EntrySheet::EntrySheet(const shell::Context& context, QWidget* parent) : Sheet(parent), m_context(context) {
    setObjectName(QStringLiteral("entrySheet"));
    addFacts();
    addForm();
    addHistory();
    lines()->addStretch(1);
    showNothing();
}

void EntrySheet::addFacts() {
    m_title = shell::titleText({}, this);
    lines()->addWidget(m_title);
    m_value = shell::titleText({}, this);
    m_value->setInk(look::Role::Key);
    m_value->setObjectName(QStringLiteral("entryValue"));
    lines()->addWidget(m_value);
    m_facts = new QWidget(this);
    m_factGrid = new QGridLayout(m_facts);
    m_factGrid->setContentsMargins(0, look::kGap, 0, look::kGap);
    m_factGrid->setHorizontalSpacing(2 * look::kGap);
    m_factGrid->setColumnStretch(1, 1);
    lines()->addWidget(m_facts);
}

void EntrySheet::addForm() {
    m_form = new QWidget(this);
    auto* form = new QVBoxLayout(m_form);
    form->setContentsMargins(0, 0, 0, 0);
    form->setSpacing(look::kGap);
    form->addWidget(shell::hairline(m_form));
    form->addWidget(shell::headingText(tr("From my own copy of the standard"), m_form));
    auto* who = new shell::Fields(2, m_form);
    m_by = input::makeTextEditor(who);
    m_by->setLabel(tr("Confirmed by"));
    m_by->setObjectName(QStringLiteral("confirmedBy"));
    who->add(m_by);
    m_copy = input::makeTextEditor(who);
    m_copy->setLabel(tr("Which copy, which table or clause"));
    m_copy->setObjectName(QStringLiteral("fromCopy"));
    who->add(m_copy);
    form->addWidget(who);
    m_when = shell::softText({}, m_form);
    form->addWidget(m_when);
    // G for agreed: a field may take Ctrl+Y for itself, to do again what was undone.
    m_same = new shell::KeyButton(tr("My copy says the same"), QKeySequence(Qt::CTRL | Qt::Key_G),
                                  shell::ButtonKind::Primary, m_form);
    m_same->setObjectName(QStringLiteral("confirmButton"));
    form->addWidget(m_same, 0, Qt::AlignLeft);
    m_fields = new shell::ValueFields(m_context.words, {}, m_form);
    form->addWidget(m_fields);
    m_bands = new BandsForm(m_context.words, m_form);
    form->addWidget(m_bands);
    m_save = new shell::KeyButton(tr("Save my copy's value"), QKeySequence(Qt::CTRL | Qt::Key_S),
                                  shell::ButtonKind::Plain, m_form);
    m_save->setObjectName(QStringLiteral("saveValueButton"));
    form->addWidget(m_save, 0, Qt::AlignLeft);
    lines()->addWidget(m_form);
    connect(m_same, &QPushButton::clicked, this, &EntrySheet::confirmSame);
    connect(m_save, &QPushButton::clicked, this, &EntrySheet::saveOther);
}

void EntrySheet::addHistory() {
    m_historyPart = new QWidget(this);
    auto* part = new QVBoxLayout(m_historyPart);
    part->setContentsMargins(0, 0, 0, 0);
    part->addWidget(shell::hairline(m_historyPart));
    part->addWidget(shell::headingText(tr("What the firm has said of it"), m_historyPart));
    m_history = new shell::LineList(tr("What the firm has said of it"),
                                    tr("Nothing yet: the value is the shipped one."), m_historyPart);
    m_history->setObjectName(QStringLiteral("ruleHistoryList"));
    m_history->setGrowing(true);
    part->addWidget(m_history);
    lines()->addWidget(m_historyPart);
}

void EntrySheet::show(const Entry& entry) {
    const bool same = m_form->isVisibleTo(this) && entry == m_entry;
    m_entry = entry;
    m_meantToday = isMeantToday();
    fillFacts();
    fillHistory();
    m_facts->show();
    m_value->show();
    m_historyPart->show();
    m_form->setVisible(!m_context.store.isReadOnly() && m_meantToday);
    if (!same) {
        fillForm();
        ensureVisible(0, 0);
    }
    shell::orderTabs(this);
}

void EntrySheet::showNothing() {
    m_entry = {};
    m_title->setText(tr("Rule book"));
    m_value->hide();
    m_facts->hide();
    m_form->hide();
    m_historyPart->hide();
}

void EntrySheet::takeFocus() {
    if (m_form->isVisible()) {
        shell::focusOn(m_by);
    }
}

void EntrySheet::addFact(const QString& caption, const QString& text) {
    if (text.isEmpty()) {
        return;
    }
    const int row = m_factGrid->rowCount();
    m_factGrid->addWidget(new shell::Text(caption, look::TypeRole::Body, look::Role::SoftInk, m_facts), row,
                          0, Qt::AlignTop);
    auto* value = shell::bodyText(text, m_facts);
    value->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_factGrid->addWidget(value, row, 1);
}

void EntrySheet::fillFacts() {
    const auto& words = m_context.words;
    m_title->setText(shell::ruleHeading(words, m_entry.key));
    m_value->setText(words.ruleValue(m_entry));
    m_value->setInk(m_entry.isKnown() ? look::Role::Key : look::Role::NoVerdict);
    while (QLayoutItem* item = m_factGrid->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    addFact(tr("How"), m_entry.isKnown() ? comparisonWords(m_entry.comparison) : QString());
    addFact(tr("Standard"), qstring(m_entry.standard));
    addFact(tr("Clause"), qstring(m_entry.clause));
    addFact(tr("Applies"), shell::ruleTimes(words, m_entry));
    addFact(tr("Known from"), m_entry.isKnown()
                                  ? QStringLiteral("%1: %2").arg(words.provenance(m_entry.provenance),
                                                                 words.provenanceMeaning(m_entry.provenance))
                                  : shell::ruleStanding(words, m_entry));
    addFact(tr("Read in"), qstring(m_entry.source));
    addFact(tr("Doubt"), qstring(m_entry.doubt));
    addFact(tr("Confirmed by"), m_entry.confirmedOn ? tr("%1, %2").arg(qstring(m_entry.confirmedBy),
                                                                       words.date(*m_entry.confirmedOn))
                                                    : QString());
    addFact(tr("Today"), m_meantToday
                             ? QString()
                             : tr("Another value of this rule applies. Open that one to confirm it or "
                                  "to enter your own copy's."));
}

bool EntrySheet::isMeantToday() const {
    const auto book = m_context.store.ruleBook();
    const auto* meant = book ? book->meantOn(m_entry.key, m_context.clock.today("Europe/London")) : nullptr;
    return meant != nullptr && meant->appliesFrom == m_entry.appliesFrom;
}

void EntrySheet::fillForm() {
    const bool isBands = rulebook::shapeOf(m_entry.key.rule) == ValueShape::Bands;
    if (m_by->text().isEmpty()) {
        if (const auto engineers = m_context.store.engineers(); engineers && !engineers->empty()) {
            m_by->setText(qstring(engineers->front().name));
        }
    }
    m_by->setProblem({});
    m_when->setText(tr("It is kept with today's date, %1. What was shipped stays readable.")
                        .arg(m_context.words.date(m_context.clock.today("Europe/London"))));
    m_same->setVisible(m_entry.isKnown());
    m_fields->setVisible(!isBands);
    m_bands->setVisible(isBands);
    if (isBands) {
        m_bands->show(m_entry);
    } else {
        m_fields->show(m_entry);
    }
}

void EntrySheet::fillHistory() {
    std::vector<shell::Line> lines;
    const auto history = m_context.store.ruleHistory(m_entry.key);
    if (!history) {
        m_history->setEmptyText(m_context.words.error(history.error()));
        m_history->setLines({});
        return;
    }
    for (const auto& said : *history) {
        Entry then = m_entry;
        then.value = said.value;
        lines.push_back({QString(), m_context.words.ruleValue(then), qstring(said.fromCopy),
                         m_context.words.shortDate(said.confirmedOn), qstring(said.confirmedBy),
                         std::nullopt});
    }
    m_history->setEmptyText(tr("Nothing yet: the value is the shipped one."));
    m_history->setLines(std::move(lines));
}

bool EntrySheet::hasName() {
    const bool has = !m_by->text().trimmed().isEmpty();
    m_by->setProblem(has ? QString() : tr("A name is needed: who read it in the firm's own copy?"));
    if (!has) {
        shell::focusOn(m_by);
    }
    return has;
}

void EntrySheet::confirmSame() {
    if (m_entry.isKnown() && hasName()) {
        save(m_entry.value);
    }
}

void EntrySheet::saveOther() {
    if (!hasName()) {
        return;
    }
    const bool isBands = rulebook::shapeOf(m_entry.key.rule) == ValueShape::Bands;
    const auto value = isBands ? m_bands->value() : m_fields->value();
    if (value) {
        save(*value);
    }
}

void EntrySheet::save(const rulebook::Value& value) {
    rulebook::FirmEntry entry;
    entry.key = m_entry.key;
    entry.value = value;
    entry.confirmedBy = m_by->text().trimmed().toStdString();
    entry.confirmedOn = m_context.clock.today("Europe/London");
    entry.fromCopy = m_copy->text().trimmed().toStdString();
    if (const auto kept = m_context.store.save(entry); !kept) {
        m_context.dialogs.tell(this, tr("The rule book is as it was"), m_context.words.error(kept.error()));
        return;
    }
    m_context.navigator.say(tr("Kept: %1").arg(shell::ruleHeading(m_context.words, m_entry.key)));
    Q_EMIT saved();
}

}  // namespace hearth::ui::rules
