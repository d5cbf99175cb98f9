// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/part_situation.h"

#include "core/record/nation.h"
#include "ui/shell/kit.h"
#include "ui/visit/register_fields.h"
#include "ui/visit/subject_name.h"
#include "ui/visit/what_first.h"
#include "ui/words/commonly_seen.h"

#include <algorithm>

namespace hearth::ui::visit {

using record::Field;
using reg::Item;
using words::Words;

SituationPart::SituationPart(const SheetContext& context, const PartRef& ref, QWidget* parent)
    : AskedPart(context, ref, parent), m_whatFirst(new WhatFirst(this)) {
    setSubtitle(tr("How dangerous it is, is the engineer's decision: nothing is filled in here."));
    addWidget(m_whatFirst);
    addWhat();
    addCommonlySeen();
    addGroups(situationGroups());
    m_reportBy = shell::namedText("reportBy", look::TypeRole::Body, look::Role::LookAgain, this);
    addWidget(m_reportBy);
    addMore();
    m_pictures = addPictures("situations");
    m_notice = new shell::KeyButton(tr("Issue the warning notice now"), shell::ButtonKind::Primary, this);
    m_notice->setObjectName(QStringLiteral("noticeButton"));
    m_notice->setAccessibleName(subjectContext(this->context(), subject()) + QStringLiteral(", ") +
                                m_notice->accessibleName());
    m_notice->setEnabled(!model().isReadOnly());
    passByEnter(m_notice);
    addWidget(m_notice);
    connect(m_notice, &QPushButton::clicked, this, &SituationPart::noticeWanted);
}

void SituationPart::addWhat() {
    shell::Fields* fields = addFields();
    addSituationField(fields, Field::SituationWhat, input::makeLongTextEditor(fields, 2), tr("What is wrong"),
                      situationText(model(), id(), &reg::Situation::what), 6);
    addSituationField(fields, Field::SituationWhere, input::makeTextEditor(fields), tr("Where"),
                      situationText(model(), id(), &reg::Situation::where), 3);
    addSituationField(fields, std::nullopt,
                      input::makeListEditor(fields, applianceChoices(model().file(), words())),
                      tr("At which appliance"), situationAppliance(model(), id()), 3);
    addSituationField(fields, Field::SituationDanger, input::makeChoiceEditor(fields, dangerChoices(words())),
                      tr("How dangerous it is"), situationDanger(model(), id()), 6);
}

/// Beside the decision, and not in its place.
void SituationPart::addCommonlySeen() {
    m_seen = shell::softText({}, this);
    m_seen->setObjectName(QStringLiteral("commonlySeen"));
    m_seen->setWordWrap(true);
    addWidget(m_seen);
    m_seenAll = new shell::KeyButton({}, shell::ButtonKind::Quiet, this);
    m_seenAll->setObjectName(QStringLiteral("commonlySeenButton"));
    passByEnter(m_seenAll);
    leaveOutByEnter(m_seenAll);  // an offer between two answers: what is typed next is the next answer
    addWidget(m_seenAll);
    m_seenAll->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Fixed);  // at the left, as wide as its text
    connect(m_seenAll, &QPushButton::clicked, this, [this] {
        m_showsAllSeen = !m_showsAllSeen;
        showCommonlySeen();
    });
}

void SituationPart::showCommonlySeen() {
    constexpr std::size_t kMost = 3;
    const auto& all = model().file().situations;
    const auto at = std::find_if(all.begin(), all.end(), [&](const auto& one) { return one.id == id(); });
    QStringList lines;
    if (m_showsAllSeen) {
        for (const words::CommonlySeen& line : words::commonlySeen()) {
            lines << words::commonlySeenText(line);
        }
    } else if (at != all.end()) {
        for (const auto* line : words::commonlySeenLike(QString::fromStdString(at->what), kMost)) {
            lines << words::commonlySeenText(*line);
        }
    }
    if (!lines.isEmpty()) {
        lines.prepend(
            tr("Commonly seen as (orientation only, from memory of IGEM/G/11 where nothing else is "
               "said; you decide):"));
    }
    m_seen->setText(lines.join(u'\n'));
    m_seen->setVisible(!lines.isEmpty());
    m_seenAll->setWords(m_showsAllSeen ? tr("Hide what is commonly seen as what")
                                       : tr("Show what is commonly seen as what"));
    m_seenAll->setAccessibleName(subjectContext(context(), subject()) + QStringLiteral(", ") +
                                 m_seenAll->accessibleName());
}

void SituationPart::addSituationField(shell::Fields* fields, std::optional<Field> field,
                                      input::Editor* editor, const QString& label, FieldBinding binding,
                                      int span) {
    editor->setLabel(label, subjectContext(context(), subject()));
    fields->add(editor, span);
    adopt(new SheetField(editor, {std::nullopt, field, subject()}, std::move(binding), words()));
}

/// By when HSE is to be told, once it is said to be reportable and since when it is known.
void SituationPart::showReportBy() {
    const reg::VisitFile& file = model().file();
    const bool isReportable = file.choiceOf(subject(), Item::SituationReportable) == reg::choice::kYes;
    const reg::Entry* known = file.find(subject(), Item::SituationKnownOn);
    const auto since = known == nullptr ? std::nullopt : calendar::fromIso(known->canonical);
    const auto by = isReportable && since
                        ? calendar::dangerousFittingReportBy(*since, record::nationOf(file.premises.country))
                        : std::nullopt;
    m_reportBy->setText(by ? tr("The business reports it to HSE by %1.").arg(words().date(*by)) : QString());
    m_reportBy->setVisible(by.has_value());
}

void SituationPart::refresh() {
    AskedPart::refresh();
    showReportBy();
    showCommonlySeen();
    const reg::VisitFile& file = model().file();
    const bool escape = file.choiceOf(subject(), Item::SituationGasEscape) == reg::choice::kYes;
    const auto event = Words::Emergency::SmellOrEscape;
    const bool appears = escape && m_whatFirst->setSteps(
                                       words().emergencyTitle(event),
                                       words().emergencySteps(event, file.installation.gas,
                                                              file.premises.country, file.emergencyContacts));
    if (!escape) {
        m_whatFirst->setSteps({}, {});
    }
    if (appears) {
        Q_EMIT urgent(m_whatFirst);
    }
}

void SituationPart::setReadOnly(bool readOnly) {
    AskedPart::setReadOnly(readOnly);
    m_notice->setEnabled(!readOnly);
    m_pictures->setReadOnly(readOnly);
}

}  // namespace hearth::ui::visit
