// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/due/remind_page.h"

#include "ui/due/due_text.h"
#include "ui/shell/line_list.h"
#include "ui/shell/paper_choice.h"

#include <algorithm>
#include <iterator>

namespace hearth::ui::due {

using reg::Channel;
using store::ReminderRefusal;
using words::qstring;

namespace {

shell::Line reminderLine(const store::Reminder& reminder, const words::Words& words) {
    shell::Line line;
    line.key = qstring(reminder.premises.text());  // the cursor stays on it
    line.title = oneLineOf(reminder.address);
    const bool goes = reminder.refusal == ReminderRefusal::None;
    const QString who = reminder.party ? qstring(reminder.party->name) : QString();
    line.detail =
        goes
            ? RemindPage::tr("%1 to %2, %3").arg(channelWord(reminder.channel), who, qstring(reminder.sentTo))
            : RemindPage::tr("Not sent: %1").arg(refusalText(reminder.refusal));
    if (reminder.booking) {
        const QString day = words.shortDate(reminder.booking->date);
        line.detail =
            (reminder.booking->afterDeadline ? RemindPage::tr("%1 · booked for %2, after the deadline")
                                             : RemindPage::tr("%1 · booked for %2"))
                .arg(line.detail, day);
    }
    line.right = RemindPage::tr("due %1").arg(words.shortDate(reminder.deadline));
    const int before = static_cast<int>(reminder.sentBefore.size());
    line.rightDetail = before > 0 ? hearth::ui::due::RemindPage::tr("%n sent before", nullptr, before)
                                  : RemindPage::tr("the first");
    line.outcome = goes ? rulebook::Outcome::Pass : rulebook::Outcome::LookAgain;
    return line;
}

}  // namespace

RemindPage::RemindPage(const DueContext& context, QWidget* parent)
    : ActionPage(context, tr("Reminders"), parent), m_list(new shell::LineList(tr("Reminders"), {}, this)) {
    setObjectName(QStringLiteral("remindPage"));
    m_list->setObjectName(QStringLiteral("remindList"));
    m_list->setMinimumHeight(200);
    lines()->addWidget(m_list, 10);
    m_cadence = input::makeTextEditor(this);
    m_cadence->setObjectName(QStringLiteral("cadenceField"));
    m_cadence->setLabel(tr("Remind so many weeks before the deadline"));
    lines()->addWidget(m_cadence);
    connect(m_cadence, &input::Editor::committed, this, &RemindPage::setCadence);
    using shell::ButtonKind;
    m_pdf = addButton(tr("Letters as one PDF"), "lettersPdfButton", QKeySequence(Qt::CTRL | Qt::Key_Return),
                      ButtonKind::Primary, [this] { writePdf(); });
    m_print = addButton(tr("Print letters"), "printLettersButton", QKeySequence(Qt::CTRL | Qt::Key_P),
                        ButtonKind::Plain, [this] { print(); });
    m_mail = addButton(tr("Begin mails"), "mailsButton", QKeySequence(Qt::CTRL | Qt::Key_M),
                       ButtonKind::Plain, [this] { mail(); });
    m_booked =
        addButton({}, "remindBookedButton", QKeySequence(Qt::CTRL | Qt::Key_B), ButtonKind::Plain, [this] {
            m_withBooked = !m_withBooked;
            fill();
        });
    endPage();
}

void RemindPage::showFor(const std::vector<reg::PremisesId>& premises) {
    m_byCadence = false;
    m_withBooked = false;
    take(context().due.remindersFor(premises, context().today()),
         tr("For the premises that were chosen, whatever the weeks say."));
}

void RemindPage::showDue(const store::DueFilter& filter) {
    m_byCadence = true;
    m_withBooked = false;
    m_filter = filter;
    take(context().due.remindersDue(filter, context().today()),
         tr("What falls due today, of the premises in the list."));
}

void RemindPage::take(const Result<std::vector<store::Reminder>>& found, const QString& below) {
    m_found = found.value_or(std::vector<store::Reminder>());
    m_below = found ? below : context().shell.words.error(found.error());
    fill();
}

void RemindPage::fill() {
    m_reminders.clear();
    std::copy_if(m_found.begin(), m_found.end(), std::back_inserter(m_reminders),
                 [this](const store::Reminder& one) { return m_withBooked || !one.booking; });
    const int booked = static_cast<int>(std::count_if(
        m_found.begin(), m_found.end(), [](const store::Reminder& one) { return one.booking.has_value(); }));
    const int letters = static_cast<int>(going(Channel::Letter).size());
    const int mails = static_cast<int>(going(Channel::Email).size());
    const int refused = static_cast<int>(m_reminders.size()) - letters - mails;
    QStringList below{m_below};
    if (booked > 0) {
        below << (m_withBooked ? tr("%n booked among them.", nullptr, booked)
                               : tr("%n booked, left out.", nullptr, booked));
    }
    setHead(tr("Reminders: %1")
                .arg(QStringList{tr("%n letter(s)", nullptr, letters), tr("%n mail(s)", nullptr, mails),
                                 tr("%n not sent", nullptr, refused)}
                         .join(QStringLiteral(", "))),
            below.join(u' '));
    m_list->setEmptyText(booked > 0 ? tr("All of them are booked. Ctrl+B reminds them too.")
                                    : tr("No reminder falls due today."));
    m_booked->setVisible(booked > 0);
    m_booked->setWords(m_withBooked ? tr("Leave out the booked") : tr("Remind the booked too"));
    std::vector<shell::Line> lines;
    for (const auto& reminder : m_reminders) {
        lines.push_back(reminderLine(reminder, context().shell.words));
    }
    m_list->setLines(std::move(lines));
    if (m_list->currentRow() < 0 && m_list->count() > 0) {
        m_list->setCurrentRow(0);
    }
    m_cadence->setVisible(m_byCadence);
    if (const auto cadence = context().due.cadence(); cadence) {
        m_cadence->setText(qstring(calendar::cadenceText(*cadence)));
    }
    const bool writes = !context().shell.store.isReadOnly();
    m_pdf->setEnabled(writes && letters > 0);
    m_print->setEnabled(writes && letters > 0);
    m_mail->setEnabled(writes && mails > 0);
}

void RemindPage::takeFocus() {
    m_list->setFocus(Qt::OtherFocusReason);
}

void RemindPage::setCadence() {
    const auto cadence = calendar::cadenceFrom(m_cadence->text().toStdString());
    if (!cadence) {
        m_cadence->setProblem(tr("Whole weeks from 1 to 52, such as: 8 4 2 1."));
        return;
    }
    m_cadence->setProblem({});
    if (const auto kept = context().due.saveCadence(*cadence); !kept) {
        tell(tr("The weeks were not kept"), kept.error());
        return;
    }
    showDue(m_filter);
}

std::vector<store::Reminder> RemindPage::going(Channel channel) const {
    std::vector<store::Reminder> chosen;
    std::copy_if(m_reminders.begin(), m_reminders.end(), std::back_inserter(chosen),
                 [channel](const store::Reminder& one) {
                     return one.refusal == ReminderRefusal::None && one.channel == channel;
                 });
    return chosen;
}

std::optional<std::vector<WordedReminder>> RemindPage::worded(const std::vector<store::Reminder>& reminders) {
    const auto firm = context().shell.store.firm();
    if (!firm) {
        tell(tr("Nothing was sent"), firm.error());
        return std::nullopt;
    }
    ReminderWording wording(*firm, context().today(), shell::firmsPaper(context().shell.store));
    std::vector<WordedReminder> texts;
    for (const auto& reminder : reminders) {
        auto one = wording.word(reminder);
        if (!one) {
            tell(tr("Nothing was sent"), one.error());
            return std::nullopt;
        }
        texts.push_back(std::move(*one));
    }
    return texts;
}

Result<void> RemindPage::keep(const std::vector<store::Reminder>& sent,
                              const std::vector<WordedReminder>& texts) {
    std::vector<store::SentLetter> letters;
    for (std::size_t i = 0; i < sent.size(); ++i) {
        store::SentLetter letter;
        letter.premises = sent[i].premises;
        letter.party = sent[i].party->id;
        letter.channel = sent[i].channel;
        letter.sentTo = sent[i].sentTo;
        letter.text = texts[i].text;
        letters.push_back(std::move(letter));
    }
    return context().due.keepSent(letters).map([](const std::vector<reg::LetterId>&) {});
}

void RemindPage::keepLetters(const std::vector<store::Reminder>& letters,
                             const std::vector<WordedReminder>& texts, const QString& how) {
    if (const auto kept = keep(letters, texts); !kept) {
        tell(tr("The letters were written, but not kept as sent"), kept.error());
        return;
    }
    finish(how);
}

void RemindPage::writePdf() {
    const auto letters = going(Channel::Letter);
    const auto texts = worded(letters);
    if (!texts) {
        return;
    }
    const auto path = context().shell.dialogs.saveFile(this, tr("Letters as one PDF"), tr("reminders.pdf"),
                                                       tr("PDF (*.pdf)"));
    if (!path) {
        return;
    }
    if (const auto written = writeLetters(*texts, *path, context().shell.words); !written) {
        tell(tr("The letters were not written"), written.error());
        return;
    }
    keepLetters(letters, *texts,
                tr("%n letter(s) written and kept.", nullptr, static_cast<int>(letters.size())));
}

void RemindPage::print() {
    auto letters = going(Channel::Letter);
    auto texts = worded(letters);
    if (!texts) {
        return;
    }
    std::size_t at = 0;
    const auto next = [&]() -> Result<std::optional<paper::PrintPart>> {
        return at == texts->size() ? std::optional<paper::PrintPart>()
                                   : std::optional(paper::PrintPart{(*texts)[at++].document, {}});
    };
    const auto printed =
        context().shell.printing.printMany({tr("Reminders"), shell::firmsPaper(context().shell.store), next});
    if (printed.failure) {
        tell(tr("Not all letters were printed"), *printed.failure);
    }
    if (printed.parts == 0) {
        return;
    }
    letters.resize(static_cast<std::size_t>(printed.parts));
    texts->resize(letters.size());
    keepLetters(letters, *texts, tr("%n letter(s) printed and kept.", nullptr, printed.parts));
}

/// One after the other: each is looked over and sent by the person. What was begun is kept as sent.
void RemindPage::mail() {
    auto mails = going(Channel::Email);
    auto texts = worded(mails);
    if (!texts) {
        return;
    }
    constexpr int kManyMails = 10;
    const int count = static_cast<int>(mails.size());
    if (count > kManyMails) {
        const int answer = context().shell.dialogs.ask(
            this, tr("Begin the mails"),
            tr("%n mail(s) will be opened one after the other in your mail program.", nullptr, count),
            {tr("Begin them"), tr("Only the first 10"), tr("None")}, 1);
        if (answer < 0 || answer > 1) {
            return;
        }
        if (answer == 1) {
            mails.resize(kManyMails);
        }
    }
    std::size_t begun = 0;
    for (; begun < mails.size(); ++begun) {
        const auto& text = (*texts)[begun];
        const auto opened =
            context().shell.mail({qstring(mails[begun].sentTo), text.subject, qstring(text.text), {}});
        if (!opened) {
            tell(tr("Not all mails were begun"), opened.error());
            break;
        }
    }
    if (begun == 0) {
        return;
    }
    mails.resize(begun);
    texts->resize(begun);
    keepLetters(
        mails, *texts,
        tr("%n mail(s) begun and kept. Send them in your mail program.", nullptr, static_cast<int>(begun)));
}

}  // namespace hearth::ui::due
