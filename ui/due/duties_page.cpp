// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/due/duties_page.h"

#include "ui/due/due_text.h"
#include "ui/shell/duty_words.h"
#include "ui/shell/line_list.h"

#include <QRegularExpression>

#include <algorithm>

namespace hearth::ui::due {

using calendar::DutyKind;
using words::qstring;

namespace {

/// The kind of letter that logs it; nothing: it is entered elsewhere.
const char* letterOf(DutyKind kind) {
    switch (kind) {
        case DutyKind::TenantCopy:
        case DutyKind::CopyBeforeMovingIn:
        case DutyKind::Display:
        case DutyKind::DisplayWithStatement:
            return store::kTenantCopyLetter;
        case DutyKind::OperatingInformation:
            return store::kInformationLetter;
        default:
            return nullptr;
    }
}

bool isDisplayed(DutyKind kind) {
    return kind == DutyKind::Display || kind == DutyKind::DisplayWithStatement;
}

shell::Line dutyLine(const store::DutyLine& duty, calendar::Date today, const words::Words& words) {
    QStringList below{duty.premises ? oneLineOf(duty.address) : QString(), shell::dutyAbout(duty)};
    below.removeAll(QString());
    shell::Line line;
    line.title = shell::dutyTitle(duty.kind);
    line.detail = below.join(QStringLiteral(" · "));
    line.right = shell::dutyDay(duty, today, words);
    const bool isOverdue = duty.isOverdue(today);
    if (isOverdue) {
        const int days = calendar::daysBetween(*duty.by, today);
        line.rightDetail = hearth::ui::due::DutiesPage::tr("%n day(s) overdue", nullptr, days);
    }
    line.outcome = isOverdue ? rulebook::Outcome::Fail
                   : duty.by ? rulebook::Outcome::LookAgain
                             : rulebook::Outcome::NoVerdict;
    return line;
}

template <class Editor>
Editor* logField(Editor* editor, const char* name, const QString& label) {
    editor->setObjectName(QString::fromLatin1(name));
    editor->setLabel(label);
    return editor;
}

}  // namespace

DutiesPage::DutiesPage(const DueContext& context, QWidget* parent)
    : ActionPage(context, tr("Other duties"), parent),
      m_reading([this](const Result<std::vector<store::DutyLine>>& open) { take(open); }),
      m_list(new shell::LineList(tr("Other duties"), tr("Nothing is open."), this)),
      m_why(shell::bodyText({}, this)) {
    setObjectName(QStringLiteral("dutiesPage"));
    m_list->setObjectName(QStringLiteral("dutiesList"));
    m_list->setMinimumHeight(200);
    lines()->addWidget(m_list, 10);
    m_why->setObjectName(QStringLiteral("dutyWhy"));
    lines()->addWidget(m_why);
    m_log = new QWidget(this);
    auto* log = new QVBoxLayout(m_log);
    log->setContentsMargins(0, 0, 0, 0);
    m_whomBox = new QVBoxLayout;
    log->addLayout(m_whomBox);
    auto* fields = new shell::Fields(3, m_log);
    m_how = logField(
        input::makeListEditor(
            fields, {{shell::coded(reg::codeOf(reg::Channel::Visit)), tr("handed over, or put up there")},
                     {shell::coded(reg::codeOf(reg::Channel::Letter)), tr("by post")},
                     {shell::coded(reg::codeOf(reg::Channel::Email)), tr("by mail")},
                     {shell::coded(reg::codeOf(reg::Channel::Other)), tr("another way")}}),
        "handedHow", tr("How"));
    m_on = logField(input::makeDateEditor(fields, [this] { return this->context().today(); }), "handedOn",
                    tr("On"));
    m_note = logField(input::makeTextEditor(fields), "handedNote", tr("Note"));
    fields->add(m_how);
    fields->add(m_on);
    fields->add(m_note);
    log->addWidget(fields);
    lines()->addWidget(m_log);
    m_keep = addButton(tr("It was handed over"), "keepHandedButton", QKeySequence(Qt::CTRL | Qt::Key_Return),
                       shell::ButtonKind::Primary, [this] { keep(); });
    connect(m_list, &shell::LineList::moved, this, &DutiesPage::pointAt);
    connect(m_list, &shell::LineList::opened, this, &DutiesPage::open);
    endPage();
}

void DutiesPage::show() {
    m_how->setText(shell::coded(reg::codeOf(reg::Channel::Visit)));
    m_on->setText(qstring(calendar::isoText(context().today())));
    m_note->setText({});
    read();
}

/// What was read before stays in view meanwhile; it is logged as done again only once it is read anew.
void DutiesPage::read() {
    m_reading.start([path = context().shell.store.path(), today = context().today()] {
        return store::openDuties(path, today);
    });
    m_list->setEmptyText(tr("Being read …"));
    fill(tr("Other duties"), tr("Being read …"));
}

void DutiesPage::take(const Result<std::vector<store::DutyLine>>& open) {
    m_duties = open.value_or(std::vector<store::DutyLine>());
    m_list->setEmptyText(open ? tr("Nothing is open.") : QString());
    const auto today = context().today();
    const int overdue =
        static_cast<int>(std::count_if(m_duties.begin(), m_duties.end(),
                                       [today](const store::DutyLine& one) { return one.isOverdue(today); }));
    fill(tr("Other duties: %1 overdue, %2 open").arg(overdue).arg(m_duties.size()),
         open ? tr("What is due beside the checks, and what runs out within 30 days. Enter leads to where it "
                   "is entered.")
              : context().shell.words.error(open.error()));
}

void DutiesPage::fill(const QString& head, const QString& below) {
    setHead(head, below);
    const auto today = context().today();
    std::vector<shell::Line> rows;
    for (const auto& duty : m_duties) {
        rows.push_back(dutyLine(duty, today, context().shell.words));
    }
    const int row = std::clamp(m_list->currentRow(), 0, std::max(0, static_cast<int>(rows.size()) - 1));
    m_list->setLines(std::move(rows));
    m_list->setCurrentRow(m_duties.empty() ? -1 : row);
    pointAt(m_list->currentRow());
}

const store::DutyLine* DutiesPage::chosen() const {
    const int row = m_list->currentRow();
    return row < 0 || row >= static_cast<int>(m_duties.size()) ? nullptr
                                                               : &m_duties[static_cast<std::size_t>(row)];
}

void DutiesPage::pointAt(int /*row*/) {
    const auto* duty = chosen();
    const bool isLogged = duty != nullptr && letterOf(duty->kind) != nullptr;
    m_why->setText(duty == nullptr
                       ? QString()
                       : QStringList{shell::dutyWhy(*duty, context().shell.words),
                                     tr("Source: %1").arg(shell::coded(calendar::sourceOf(duty->kind)))}
                             .join(u' ')
                             .trimmed());
    m_log->setVisible(isLogged);
    m_keep->setWords(duty != nullptr && isDisplayed(duty->kind) ? tr("It hangs there")
                                                                : tr("It was handed over"));
    m_keep->setEnabled(isLogged && !m_reading.isBusy() && !context().shell.store.isReadOnly());
    if (isLogged) {
        offerWhom(*duty);
    }
}

/// A tenant's copy is for that tenant alone; information goes to whoever holds a role there.
void DutiesPage::offerWhom(const store::DutyLine& line) {
    std::vector<input::ChoiceItem> people;
    if (line.party) {
        people.push_back({qstring(line.party->text()), qstring(line.what)});
    } else {
        for (const auto& one : reachableAt(context().shell.store, {*line.premises})) {
            people.push_back({qstring(one.party.id.text()),
                              QStringLiteral("%1 · %2").arg(qstring(one.party.name),
                                                            context().shell.words.role(one.role))});
        }
    }
    delete m_whom;
    m_whom = logField(input::makeListEditor(m_log, people), "handedTo", tr("To whom"));
    m_whom->setText(people.empty() ? QString() : people.front().code);
    m_whomBox->addWidget(m_whom);
    shell::orderTabs(this);
}

void DutiesPage::takeFocus() {
    m_list->setFocus(Qt::OtherFocusReason);
}

void DutiesPage::open(int row) {
    const auto& duty = m_duties[static_cast<std::size_t>(row)];
    auto& navigator = context().shell.navigator;
    if (duty.record) {
        navigator.openRecord(*duty.record);
    } else if (duty.visit) {
        navigator.openVisit(*duty.visit);
    } else if (duty.premises) {
        navigator.openPremises(*duty.premises);
    } else {
        navigator.openFirm(duty.kind == DutyKind::Calibration ? record::Field::InstrumentCalibration
                           : duty.kind == DutyKind::Insurance ? record::Field::FirmRegistration
                                                              : record::Field::EngineerCard,
                           duty.of);
    }
}

/// Noon of a day that is past, so that the day stays the same in every zone; now of today.
std::optional<Instant> DutiesPage::handedAt() {
    const auto day = shell::dateTyped(m_on->text(), context().today());
    if (!day || !*day) {
        m_on->setProblem(day ? tr("On which day?") : context().shell.words.error(day.error()));
        shell::focusOn(m_on);
        return std::nullopt;
    }
    if (**day > context().today()) {
        m_on->setProblem(tr("That day is still to come."));
        shell::focusOn(m_on);
        return std::nullopt;
    }
    Instant at = context().shell.clock.now();
    if (**day != context().today() && !instantAt(**day, "12:00", at)) {
        return std::nullopt;
    }
    return at;
}

void DutiesPage::keep() {
    commit();
    const auto* duty = chosen();
    if (duty == nullptr || letterOf(duty->kind) == nullptr || m_reading.isBusy()) {
        return;
    }
    const auto party = uuidFromText(m_whom->text().toStdString());
    if (!party) {
        m_whom->setProblem(tr("To whom? Add a landlord, owner or customer under Premises."));
        shell::focusOn(m_whom);
        return;
    }
    const auto at = handedAt();
    if (!at) {
        return;
    }
    store::SentLetter letter;
    letter.premises = *duty->premises;
    letter.party = reg::PartyId{*party};
    letter.kind = letterOf(duty->kind);
    letter.channel = reg::channelFromCode(m_how->text().toStdString()).value_or(reg::Channel::Other);
    letter.sentTo = duty->party ? duty->what : std::string();
    letter.text = QStringList{shell::dutyTitle(duty->kind), qstring(duty->which), m_note->text().trimmed()}
                      .filter(QRegularExpression(QStringLiteral("\\S")))
                      .join(QStringLiteral(", "))
                      .toStdString();
    letter.at = at;
    if (const auto kept = context().due.keepSent({letter}); !kept) {
        tell(tr("It was not kept"), kept.error());
        return;
    }
    context().shell.navigator.say(tr("Kept: %1.").arg(qstring(letter.text)));
    m_duties.erase(m_duties.begin() + m_list->currentRow());
    show();
    takeFocus();
}

}  // namespace hearth::ui::due
