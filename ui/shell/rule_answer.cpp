// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/rule_answer.h"

#include "ui/shell/kit.h"
#include "ui/shell/value_fields.h"

namespace hearth::ui::shell {

using words::qstring;

namespace {

const QString kSame = QStringLiteral("same");
const QString kOther = QStringLiteral("other");
const QString kLater = QStringLiteral("later");

std::vector<input::ChoiceItem> answersFor(const rulebook::Entry& entry) {
    std::vector<input::ChoiceItem> answers;
    if (entry.isKnown()) {
        answers.push_back({kSame, RuleAnswer::tr("&Same in my copy")});
    }
    answers.push_back(
        {kOther, entry.isKnown() ? RuleAnswer::tr("&Another value") : RuleAnswer::tr("&Enter the value")});
    answers.push_back({kLater, RuleAnswer::tr("&Later")});
    return answers;
}

}  // namespace

QString ruleStanding(const words::Words& words, const rulebook::Entry& entry) {
    return entry.isKnown() ? words.provenance(entry.provenance) : RuleAnswer::tr("for the firm to enter");
}

QString ruleTimes(const words::Words& words, const rulebook::Entry& entry) {
    if (entry.appliesFrom && entry.appliesTo) {
        return RuleAnswer::tr("from %1 to %2")
            .arg(words.date(*entry.appliesFrom), words.date(*entry.appliesTo));
    }
    if (entry.appliesFrom) {
        return RuleAnswer::tr("from %1").arg(words.date(*entry.appliesFrom));
    }
    return entry.appliesTo ? RuleAnswer::tr("up to %1").arg(words.date(*entry.appliesTo)) : QString();
}

QString ruleHeading(const words::Words& words, const rulebook::RuleKey& key) {
    QStringList parts{words.rule(key.rule)};
    if (key.edition != rulebook::Edition::General) {
        parts << words.edition(key.edition);
    }
    if (key.gas) {
        parts << words.gas(*key.gas);
    }
    return parts.join(QStringLiteral(" · "));
}

RuleAnswer::RuleAnswer(const words::Words& words, const rulebook::Entry& entry, QWidget* parent)
    : QWidget(parent), m_entry(entry) {
    const QString heading = ruleHeading(words, entry.key);
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(look::kGap / 2);
    auto* title = bodyText(heading, this);
    title->setFont(strongFont());
    lines->addWidget(title);
    auto* value =
        bodyText(QStringLiteral("%1 · %2").arg(words.ruleValue(entry), ruleStanding(words, entry)), this);
    value->setToolTip(words.provenanceMeaning(entry.provenance));
    lines->addWidget(value);
    QStringList origin{qstring(entry.source), qstring(entry.doubt)};
    origin.removeAll(QString());
    if (!origin.isEmpty()) {
        lines->addWidget(softText(origin.join(QStringLiteral(" · ")), this));
    }
    m_choice = input::makeChoiceEditor(this, answersFor(entry));
    m_choice->setLabel(tr("My own copy"), heading);
    m_choice->setObjectName(QStringLiteral("ruleAnswer"));
    m_choice->setText(kLater);
    lines->addWidget(m_choice);
    m_fields = new ValueFields(words, heading, this);
    m_fields->show(entry);
    m_fields->hide();
    lines->addWidget(m_fields);
    connect(m_choice, &input::Editor::committed, this, &RuleAnswer::choose);
}

void RuleAnswer::choose(const QString& code) {
    m_answer = code == kSame ? Answer::Same : code == kOther ? Answer::Other : Answer::Later;
    m_fields->setVisible(m_answer == Answer::Other);
}

std::optional<rulebook::Value> RuleAnswer::value() {
    switch (m_answer) {
        case Answer::Same:
            return m_entry.value;
        case Answer::Other:
            return m_fields->value();
        case Answer::Later:
            break;
    }
    return std::nullopt;
}

bool RuleAnswer::isUsable() {
    return m_answer != Answer::Other || m_fields->value().has_value();
}

}  // namespace hearth::ui::shell
