// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/due/due_place.h"

#include "ui/due/book_page.h"
#include "ui/due/call_page.h"
#include "ui/due/due_files.h"
#include "ui/due/due_head.h"
#include "ui/due/due_text.h"
#include "ui/due/due_views.h"
#include "ui/due/duties_page.h"
#include "ui/due/duty_counter.h"
#include "ui/due/evidence_file.h"
#include "ui/due/kept_page.h"
#include "ui/due/overview_page.h"
#include "ui/due/remind_page.h"
#include "ui/due/story_page.h"
#include "ui/shell/due_writing.h"
#include "ui/shell/exporting.h"
#include "ui/shell/kit.h"
#include "ui/shell/saving.h"
#include "ui/words/document_words.h"

#include <QKeyEvent>
#include <QStackedLayout>

#include <algorithm>
#include <iterator>

namespace hearth::ui::due {

DuePlace::DuePlace(const shell::Context& context, store::Due& due, QWidget* parent)
    : Place(parent), m_context(context), m_due(due) {
    setObjectName(QStringLiteral("duePlace"));
}

void DuePlace::build() {
    m_counter = new DutyCounter(m_context.store.path(), this);
    auto* browse = new QWidget(this);
    addList(browse);
    m_views = new QStackedLayout(this);
    m_views->addWidget(browse);
}

void DuePlace::addList(QWidget* browse) {
    m_head = new DueHead([this](store::DueBy by) { return choicesBy(by); }, browse);
    m_list = new DueList(
        m_due, m_context.words, [this](const Error& error) { failed(error); }, browse);
    m_list->setObjectName(QStringLiteral("dueList"));
    auto* lines = new QVBoxLayout(browse);
    lines->setContentsMargins(2 * look::kGap, look::kGap, 2 * look::kGap, look::kGap);
    lines->setSpacing(look::kGap);
    lines->addWidget(m_head);
    auto* table = new QVBoxLayout;
    table->setSpacing(0);
    table->addWidget(new DueHeader(*m_list, browse));
    table->addWidget(m_list, 1);
    lines->addLayout(table, 1);
    lines->addWidget(new Legend(browse));
    auto* chosen = shell::softText({}, browse);
    chosen->setObjectName(QStringLiteral("chosenText"));
    m_chosenText = chosen;
    lines->addWidget(chosen);
    auto* bar = new ActionBar(
        {Action::Book, Action::NoAccess, Action::Call, Action::Remind, Action::RemindersDue, Action::Duties,
         Action::Day, Action::Summary, Action::Calendar, Action::Overview, Action::Premises},
        !m_context.store.isReadOnly(), browse);
    lines->addWidget(bar);
    connect(bar, &ActionBar::asked, this, &DuePlace::act);
    connect(m_head, &DueHead::changed, this, &DuePlace::fill);
    connect(m_head, &DueHead::viewChosen, this, &DuePlace::chooseView);
    connect(m_head, &DueHead::saveAsked, this, &DuePlace::saveViewAs);
    connect(m_head, &DueHead::forgetAsked, this, &DuePlace::forgetShownView);
    connect(m_counter, &DutyCounter::counted, m_head, &DueHead::setDuties);
    connect(m_counter, &DutyCounter::failed, this, &DuePlace::failed);
    connect(m_head, &DueHead::dutiesAsked, this, [this] { act(Action::Duties); });
    connect(m_list, &DueList::opened, this, [this](int row) { openStory(m_list->line(row).premises); });
    connect(m_list, &DueList::chosenChanged, this, &DuePlace::sayChosen);
}

void DuePlace::refresh() {
    if (m_list == nullptr) {
        build();
    }
    fill();
    m_counter->count(today());
    if (m_story != nullptr && m_views->currentWidget() == m_story && !m_story->show(m_story->premises())) {
        m_views->setCurrentIndex(0);
    }
}

void DuePlace::failed(const Error& error) {
    m_context.navigator.say(m_context.words.error(error));
}

std::vector<store::DueChoice> DuePlace::choicesBy(store::DueBy by) {
    auto choices = m_due.dueChoices(by, today());
    if (!choices) {
        failed(choices.error());
        return {};
    }
    return std::move(*choices);
}

void DuePlace::fill() {
    const auto counts = m_due.dueCounts(m_head->filter(), today());
    if (!counts) {
        m_list->setEmptyText(m_context.words.error(counts.error()));
        m_list->ask({m_head->filter(), m_head->sort(), today()}, 0);
        return;
    }
    m_head->offer(savedViews(m_context.store));
    m_head->setCounts(*counts);
    int count = 0;
    const auto& states = m_head->filter().states;
    for (const auto state : calendar::kDueStates) {
        const bool asked = states.empty() ? state != calendar::DueState::NoDuty
                                          : std::find(states.begin(), states.end(), state) != states.end();
        count += asked ? counts->at(state) : 0;
    }
    m_list->setEmptyText(m_head->isFiltered()
                             ? tr("Nothing like this. Alt+0 shows everything.")
                             : tr("No premises with a check to be made yet. Premises with a landlord or an "
                                  "agent come here by themselves."));
    m_list->ask({m_head->filter(), m_head->sort(), today(), *counts}, count);
    if (auto* browse = m_views->widget(0)) {
        shell::orderTabs(browse);
    }
}

template <class Page>
Page* DuePlace::page(Page*& kept) {
    if (kept == nullptr) {
        kept = new Page(DueContext{m_context, m_due}, this);
        m_views->addWidget(kept);
        connect(kept, &ActionPage::closed, this, &DuePlace::backToList);
        if constexpr (std::is_same_v<Page, StoryPage>) {
            connect(kept, &StoryPage::asked, this, &DuePlace::act);
        }
        if constexpr (std::is_same_v<Page, OverviewPage>) {
            connect(kept, &OverviewPage::landlordChosen, this, [this](reg::PartyId landlord) {
                store::DueFilter filter;
                filter.landlord = landlord;
                m_head->show(filter, store::DueSort::Need, {});
                showList();
            });
        }
    }
    return kept;
}

void DuePlace::bring(ActionPage* page) {
    m_views->setCurrentWidget(page);
    page->takeFocus();
}

void DuePlace::openStory(reg::PremisesId premises) {
    auto* story = page(m_story);
    if (story->show(premises)) {
        m_fromStory = false;
        bring(story);
    }
}

void DuePlace::openOverdue(const std::vector<reg::PremisesId>& premises) {
    store::DueFilter filter;
    filter.states = {calendar::DueState::Overdue};
    m_head->show(filter, store::DueSort::Need, {});
    showList();
    m_list->choose(premises);
}

/// Those that an action is for: of the story in view, or chosen in the list.
std::vector<reg::PremisesId> DuePlace::meant() const {
    return m_story != nullptr && m_views->currentWidget() == m_story
               ? std::vector<reg::PremisesId>{m_story->premises()}
               : m_list->chosen();
}

bool DuePlace::actOnMany(Action action, const std::vector<reg::PremisesId>& premises) {
    switch (action) {
        case Action::Book:
            page(m_book)->show(premises);
            bring(m_book);
            return true;
        case Action::NoAccess:
            page(m_noAccess)->show(premises);
            bring(m_noAccess);
            return true;
        case Action::Call:
            page(m_call)->show(premises);
            bring(m_call);
            return true;
        case Action::Remind:
            page(m_remind)->showFor(premises);
            bring(m_remind);
            return true;
        case Action::Earlier:
            page(m_earlier)->show(premises.front());
            bring(m_earlier);
            return true;
        case Action::Copy:
            page(m_copy)->show(premises.front());
            bring(m_copy);
            return true;
        default:
            return false;
    }
}

/// What is done with the list as a whole; false: it is done with premises.
bool DuePlace::actOnAll(Action action) {
    switch (action) {
        case Action::RemindersDue:
            page(m_remind)->showDue(m_head->filter());
            bring(m_remind);
            return true;
        case Action::Overview:
            page(m_overview)->show();
            bring(m_overview);
            return true;
        case Action::Duties:
            page(m_duties)->show();
            bring(m_duties);
            return true;
        case Action::Day:
            page(m_day)->show();
            bring(m_day);
            return true;
        case Action::Summary:
            writeSummary();
            return true;
        case Action::Calendar:
            shell::exportCalendar(m_head->filter(), m_context, this);
            return true;
        default:
            return false;
    }
}

namespace {

/// The landlord or agent that the list was narrowed to; else the landlord of all that it shows.
std::string whoseSummary(const store::DueFilter& filter, const std::vector<store::DueLine>& lines) {
    if (lines.empty()) {
        return {};
    }
    const auto& first = lines.front();
    if (!filter.landlord && filter.agent) {
        return first.agentName;
    }
    const bool isOnes = std::all_of(lines.begin(), lines.end(), [&first](const store::DueLine& line) {
        return line.landlord == first.landlord;
    });
    return isOnes ? first.landlordName : std::string();
}

Result<std::string> spreadsheetOf(const store::Due& due, const std::vector<store::DueLine>& lines,
                                  calendar::Date today, const words::Words& words) {
    std::vector<reg::PremisesId> premises;
    std::transform(lines.begin(), lines.end(), std::back_inserter(premises),
                   [](const store::DueLine& line) { return line.premises; });
    return due.newestRecords(premises).map(
        [&](const std::vector<std::string>& records) { return summaryCsv(lines, records, today, words); });
}

}  // namespace

/// What the list shows, as it stands: where all of it is one landlord's it is that landlord's summary, in the
/// language that they prefer.
void DuePlace::writeSummary() {
    const QString title = tr("Summary of the list");
    const auto lines = allLines(m_due, m_head->filter(), m_head->sort(), today());
    if (!lines) {
        m_context.dialogs.tell(this, title, m_context.words.error(lines.error()));
        return;
    }
    const int how = m_context.dialogs.ask(this, title,
                                          tr("All that the list shows, with states, dates and records. How?"),
                                          {tr("As PDF"), tr("As a spreadsheet (CSV)")}, 0);
    const auto path =
        how == 0   ? m_context.dialogs.saveFile(this, title, tr("checks.pdf"), tr("PDF (*.pdf)"))
        : how == 1 ? m_context.dialogs.saveFile(this, title, tr("checks.csv"), tr("Spreadsheet (*.csv)"))
                   : std::nullopt;
    if (!path) {
        return;
    }
    const auto& filter = m_head->filter();
    const auto in = shell::summaryLanguage(m_context.store, filter, *lines, m_context.words.language());
    const auto bytes = how == 1 ? spreadsheetOf(m_due, *lines, today(), m_context.words)
                                : shell::summaryPdf(m_context.store, *lines, whoseSummary(filter, *lines),
                                                    today(), in.language);
    const auto written =
        bytes ? shell::writeFile(*path, *bytes) : Result<void>(tl::unexpected<Error>(bytes.error()));
    if (!written) {
        m_context.dialogs.tell(this, tr("The summary was not written"),
                               m_context.words.error(written.error()));
        return;
    }
    const QString done = tr("%n premises written.", nullptr, static_cast<int>(lines->size()));
    m_context.navigator.say(
        how == 0 && in.differ
            ? tr("%1 Those it is for prefer different languages: it is in the window's.").arg(done)
            : done);
}

/// For the landlord: what was done for one premises, as it stands in the store, in the language that they
/// prefer.
void DuePlace::writeEvidence(reg::PremisesId premises) {
    const QString title = tr("What was done, for the landlord");
    const auto evidence = gatherEvidence(m_context.store, premises, today());
    const auto file = m_due.dueFile(premises, today());
    if (!evidence || !file) {
        m_context.dialogs.tell(this, title,
                               m_context.words.error(evidence ? file.error() : evidence.error()));
        return;
    }
    const auto path = m_context.dialogs.saveFile(this, title, tr("evidence.pdf"), tr("PDF (*.pdf)"));
    if (!path) {
        return;
    }
    const auto pdf = paper::toPdf(words::documentIn(shell::languageOfHolder(m_context.store, file->line),
                                                    [&](const words::Words& words) {
                                                        return words::evidenceDocument(words, *evidence);
                                                    }),
                                  {});
    const auto written =
        pdf ? shell::writeFile(*path, pdf->toStdString()) : Result<void>(tl::unexpected<Error>(pdf.error()));
    if (!written) {
        m_context.dialogs.tell(this, tr("The evidence was not written"),
                               m_context.words.error(written.error()));
        return;
    }
    m_context.navigator.say(tr("Written to %1.").arg(*path));
}

void DuePlace::act(Action action) {
    const bool fromStory = m_story != nullptr && m_views->currentWidget() == m_story;
    if (actOnAll(action)) {
        return;
    }
    const auto premises = meant();
    if (premises.empty()) {
        m_context.navigator.say(tr("Choose premises first."));
        return;
    }
    if (actOnMany(action, premises)) {
        m_fromStory = fromStory;
        return;
    }
    if (action == Action::Evidence) {
        writeEvidence(premises.front());
    } else if (action == Action::Premises) {
        m_context.navigator.openPremises(premises.front());
    } else if (action == Action::Visit) {
        m_context.navigator.startVisit(premises.front());
    }
}

void DuePlace::showList() {
    m_fromStory = false;
    backToList({});
}

void DuePlace::backToList(const QString& done) {
    const bool wasStory = m_story != nullptr && m_views->currentWidget() == m_story;
    if (m_fromStory && !wasStory && m_story->show(m_story->premises())) {
        m_fromStory = false;
        bring(m_story);
    } else {
        m_fromStory = false;
        m_views->setCurrentIndex(0);
        m_list->setFocus(Qt::OtherFocusReason);
    }
    fill();
    m_counter->count(today());
    if (!done.isEmpty()) {
        m_context.navigator.say(done);
    }
}

void DuePlace::commit() {
    shell::commitField(this);
}

void DuePlace::sayChosen() {
    const int chosen = static_cast<int>(m_list->selectionModel()->selectedIndexes().size());
    static_cast<shell::Text*>(m_chosenText)
        ->setText(chosen > 1
                      ? tr("%n premises chosen. What you do next is done for all of them.", nullptr, chosen)
                      : tr("Enter: the whole story. Shift+arrows or Ctrl+Space choose several. Left and "
                           "Right move the strip, + and − widen and narrow it."));
}

void DuePlace::chooseView(const QString& name) {
    const auto views = savedViews(m_context.store);
    const auto found =
        std::find_if(views.begin(), views.end(), [&name](const DueView& view) { return view.name == name; });
    if (found == views.end()) {
        m_head->show({}, store::DueSort::Need, {});
    } else {
        m_head->show(found->filter, found->sort, found->name);
    }
    fill();
}

void DuePlace::saveViewAs() {
    const auto name = m_context.dialogs.askText(this, tr("Save this view"), tr("Name of the view"));
    if (!name || name->trimmed().isEmpty()) {
        return;
    }
    if (const auto kept = saveView(m_context.store, {name->trimmed(), m_head->filter(), m_head->sort()});
        !kept) {
        m_context.dialogs.tell(this, tr("The view was not saved"), m_context.words.error(kept.error()));
        return;
    }
    m_head->show(m_head->filter(), m_head->sort(), name->trimmed());
    fill();
    m_context.navigator.say(tr("Saved as “%1”.").arg(name->trimmed()));
}

void DuePlace::forgetShownView() {
    if (const auto gone = forgetView(m_context.store, m_head->view()); !gone) {
        failed(gone.error());
        return;
    }
    m_head->show(m_head->filter(), m_head->sort(), {});
    fill();
    m_list->setFocus(Qt::OtherFocusReason);
}

void DuePlace::takeFocus() {
    if (auto* page = qobject_cast<ActionPage*>(m_views->currentWidget())) {
        page->takeFocus();
    } else {
        m_list->setFocus(Qt::OtherFocusReason);
    }
}

void DuePlace::takeFound() {
    m_list->setFocus(Qt::OtherFocusReason);
}

void DuePlace::search(const QString& text) {
    m_views->setCurrentIndex(0);
    m_head->setText(text);
    fill();
}

void DuePlace::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        m_list->setFocus(Qt::OtherFocusReason);
        return;
    }
    Place::keyPressEvent(event);
}

}  // namespace hearth::ui::due
