// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/kit.h"
#include "ui/visit/parts.h"
#include "ui/visit/what_first.h"

#include <QCoreApplication>

#include <array>

namespace hearth::ui::visit {

namespace {

using reg::Item;
using rulebook::FindingKind;
using words::Words;

/// Before you start: smell first of all. A bad answer says what to do before anything else is asked.
class BeforePart : public PartView {
    Q_DECLARE_TR_FUNCTIONS(hearth::ui::visit::BeforePart)
  public:
    BeforePart(const SheetContext& context, QWidget* parent);
    void refresh() override;

  private:
    /// A question, and what to do first where its answer is bad.
    struct Question {
        Item item;
        FindingKind judgedBy;
        SheetField* field = nullptr;
        WhatFirst* panel = nullptr;
        bool isSeenTo = false;
    };
    void addQuestion(Question question);
    [[nodiscard]] bool isBad(const Question& question) const;
    void showPanel(Question& question);
    void showSmell(Question& question);
    void askInTurn();
    [[nodiscard]] bool isAnsweredBeyond(std::size_t index) const;

    std::vector<Question> m_questions;
};

BeforePart::BeforePart(const SheetContext& context, QWidget* parent)
    : PartView(context, {PartKind::BeforeYouStart}, parent) {
    setSubtitle(tr("Nose first. Then look, then touch."));
    addQuestion({Item::SmellOnArrival, FindingKind::SmellOnArrival});
    addQuestion({Item::OpenEnds, FindingKind::OpenEnds});
    addQuestion({Item::SafeToTouch, FindingKind::SafeToTouch});
    auto* fields = addFields();
    addItem(fields, Item::VisualInspection, 6);
    addItem(fields, Item::VisualNotes, 6);
    for (const Item item :
         {Item::GasOnArrival, Item::StillToDo, Item::MeterNotice, Item::MainBonding, Item::ResponsibleTold}) {
        addItem(fields, item, 6);
    }
}

void BeforePart::addQuestion(Question question) {
    question.field = addItem(addFields(), question.item, 6);
    question.panel = new WhatFirst(this);
    question.panel->setDoneButton(tr("Seen to: go on"));
    addWidget(question.panel);
    const std::size_t index = m_questions.size();
    connect(question.panel, &WhatFirst::done, this, [this, index] {
        m_questions[index].isSeenTo = true;
        refresh();
        if (index + 1 < m_questions.size()) {
            shell::focusOn(m_questions[index + 1].field->editor());
        }
    });
    m_questions.push_back(question);
}

bool BeforePart::isBad(const Question& question) const {
    const judging::Judged* judged = finding(question.judgedBy);
    return judged != nullptr && judged->finding.outcome == rulebook::Outcome::Fail;
}

void BeforePart::showSmell(Question& question) {
    const reg::VisitFile& file = model().file();
    const auto event = Words::Emergency::SmellOrEscape;
    if (question.panel->setSteps(words().emergencyTitle(event),
                                 words().emergencySteps(event, file.installation.gas, file.premises.country,
                                                        file.emergencyContacts))) {
        Q_EMIT urgent(question.panel);
    }
}

void BeforePart::showPanel(Question& question) {
    const bool smell = question.item == Item::SmellOnArrival &&
                       model().file().choiceOf(subject(), Item::SmellOnArrival) == reg::choice::kYes;
    if (smell) {
        showSmell(question);
        return;
    }
    const judging::Judged* judged = finding(question.judgedBy);
    if (!isBad(question) || question.item == Item::SmellOnArrival) {
        question.panel->setSteps({}, {});
        question.isSeenTo = false;
        return;
    }
    QStringList steps{words().sentence(judged->finding.why)};
    for (const rulebook::Sentence& note : judged->finding.notes) {
        steps << words().sentence(note);
    }
    if (question.panel->setSteps(words().findingTitle(question.judgedBy), steps)) {
        Q_EMIT urgent(question.panel);
    }
}

bool BeforePart::isAnsweredBeyond(std::size_t index) const {
    constexpr std::array kOrder{Item::SmellOnArrival, Item::OpenEnds, Item::SafeToTouch,
                                Item::VisualInspection};
    for (std::size_t later = index + 1; later < kOrder.size(); ++later) {
        if (model().file().find(subject(), kOrder[later]) != nullptr) {
            return true;
        }
    }
    return false;
}

void BeforePart::askInTurn() {
    bool held = false;
    std::size_t index = 0;
    for (Question& question : m_questions) {
        question.field->editor()->setEnabled(!held);
        const bool shows = !question.panel->isHidden();
        // A visit that was left and taken up again has gone on already.
        question.isSeenTo = shows && (question.isSeenTo || isAnsweredBeyond(index));
        question.panel->doneButton()->setVisible(shows && !question.isSeenTo && !model().isReadOnly());
        held = held || (shows && !question.isSeenTo);
        ++index;
    }
    for (const Item item : {Item::VisualInspection, Item::VisualNotes}) {
        find({item, std::nullopt, subject()})->editor()->setEnabled(!held);
    }
}

void BeforePart::refresh() {
    PartView::refresh();
    for (Question& question : m_questions) {
        showPanel(question);
    }
    askInTurn();
}

}  // namespace

PartView* makeBeforePart(const SheetContext& context, QWidget* parent) {
    return new BeforePart(context, parent);
}

}  // namespace hearth::ui::visit
