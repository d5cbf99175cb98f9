// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/due/call_page.h"

#include "core/exchange/picture.h"
#include "ui/due/due_text.h"

#include <QBuffer>
#include <QFile>
#include <QFileInfo>
#include <QImage>

namespace hearth::ui::due {

using reg::Channel;
using words::qstring;

namespace {

constexpr int kThumbnail = 160;
constexpr const char* kOwnLetter = "letter";  // written elsewhere

input::Editor* named(input::Editor* editor, const char* name, const QString& label) {
    editor->setObjectName(QString::fromLatin1(name));
    editor->setLabel(label);
    return editor;
}

}  // namespace

CallPage::CallPage(const DueContext& context, QWidget* parent)
    : ActionPage(context, tr("A call or a letter"), parent) {
    setObjectName(QStringLiteral("callPage"));
    m_whoBox = new QVBoxLayout;
    lines()->addLayout(m_whoBox);
    m_fields = new shell::Fields(3, this);
    std::vector<input::ChoiceItem> channels;
    for (const auto channel :
         {Channel::Telephone, Channel::Letter, Channel::Email, Channel::TextMessage, Channel::Other}) {
        channels.push_back({shell::coded(reg::codeOf(channel)), channelWord(channel)});
    }
    m_how = named(input::makeListEditor(m_fields, channels), "callHow", tr("How"));
    connect(m_how, &input::Editor::committed, this, &CallPage::showNumber);
    m_number = named(input::makeTextEditor(m_fields), "callNumber", tr("Number"));
    m_result = named(input::makeTextEditor(m_fields), "callResult", tr("What came of it"));
    m_text = named(input::makeLongTextEditor(m_fields, 4), "callText", tr("What was said"));
    m_fields->add(m_how);
    m_fields->add(m_number);
    m_fields->add(m_result);
    m_fields->add(m_text, 3);
    lines()->addWidget(m_fields);
    addButton(tr("Keep it"), "keepCallButton", QKeySequence(Qt::CTRL | Qt::Key_Return),
              shell::ButtonKind::Primary, [this] { keep(); });
    endPage();
}

void CallPage::show(const std::vector<reg::PremisesId>& premises) {
    m_premises = premises;
    m_people = reachableAt(context().shell.store, premises);
    setHead(tr("A call or a letter: %1").arg(premisesText(context().shell.store, premises)),
            m_people.empty() ? tr("Nobody is known there. Add a landlord, agent or customer under Premises.")
                             : QString());
    std::vector<input::ChoiceItem> items;
    for (const auto& one : m_people) {
        items.push_back(
            {qstring(one.party.id.text()),
             QStringLiteral("%1 · %2").arg(qstring(one.party.name), context().shell.words.role(one.role))});
    }
    delete m_who;
    m_who = named(input::makeListEditor(this, items), "callWho", tr("With whom"));
    m_whoBox->addWidget(m_who);
    m_who->setText(items.empty() ? QString() : items.front().code);
    connect(m_who, &input::Editor::committed, this, &CallPage::showNumber);
    for (auto* field : {m_text, m_result}) {
        field->setText({});
    }
    m_how->setText(shell::coded(reg::codeOf(Channel::Telephone)));
    showNumber();
    shell::orderTabs(this);
}

Channel CallPage::channel() const {
    return reg::channelFromCode(m_how->text().toStdString()).value_or(Channel::Other);
}

void CallPage::showNumber() {
    const auto how = channel();
    const bool isSaid = how == Channel::Telephone || how == Channel::Other;
    m_number->setLabel(how == Channel::Letter || how == Channel::Email ? tr("Address") : tr("Number"));
    m_text->setLabel(isSaid ? tr("What was said") : tr("What was written, word for word"));
    for (const auto& one : m_people) {
        if (qstring(one.party.id.text()) == m_who->text()) {
            m_number->setText(how == Channel::Letter  ? oneLineOf(one.party.address)
                              : how == Channel::Email ? qstring(one.party.email)
                                                      : qstring(one.party.telephone));
        }
    }
}

/// A call at several premises is one step of undo, and so is a letter.
Result<void> CallPage::log(reg::PartyId party) {
    const auto typed = [](const input::Editor* editor) { return editor->text().trimmed().toStdString(); };
    if (channel() != Channel::Telephone) {
        std::vector<store::SentLetter> letters;
        for (const auto& premises : m_premises) {
            letters.push_back(
                {premises, party, kOwnLetter, channel(), typed(m_number), typed(m_text), typed(m_result)});
        }
        return context().due.keepSent(letters).map([](const std::vector<reg::LetterId>&) {});
    }
    return context().shell.store.together(
        [&]() -> Result<void> {
            for (const auto& premises : m_premises) {
                const auto kept =
                    context().due.logCall({premises, party, typed(m_number), typed(m_text), typed(m_result)});
                if (!kept) {
                    return tl::unexpected<Error>(kept.error());
                }
            }
            return {};
        },
        store::Store::Steps::One);
}

void CallPage::takeFocus() {
    shell::focusOn(m_who);
}

void CallPage::keep() {
    commit();
    const auto party = uuidFromText(m_who->text().toStdString());
    if (!party) {
        m_who->setProblem(tr("With whom?"));
        takeFocus();
        return;
    }
    const bool isCall = channel() == Channel::Telephone;
    if (m_text->text().trimmed().isEmpty() && (!isCall || m_result->text().trimmed().isEmpty())) {
        m_text->setProblem(isCall ? tr("What was said? One word is enough: no answer.")
                                  : tr("What was written? It is kept word for word."));
        shell::focusOn(m_text);
        return;
    }
    if (const auto logged = log(reg::PartyId{*party}); !logged) {
        tell(isCall ? tr("The call was not kept") : tr("The letter was not kept"), logged.error());
        return;
    }
    finish(isCall ? tr("The call is kept.") : tr("The letter is kept."));
}

NoAccessPage::NoAccessPage(const DueContext& context, QWidget* parent)
    : ActionPage(context, tr("No access"), parent) {
    setObjectName(QStringLiteral("noAccessPage"));
    addFields();
    addButton(tr("Keep it"), "keepNoAccessButton", QKeySequence(Qt::CTRL | Qt::Key_Return),
              shell::ButtonKind::Primary, [this] { keep(); });
    addButton(tr("Photograph…"), "photographButton", QKeySequence(Qt::CTRL | Qt::Key_P),
              shell::ButtonKind::Plain, [this] { choosePhotograph(); });
    endPage();
}

void NoAccessPage::addFields() {
    auto* fields = new shell::Fields(4, this);
    const auto today = [this] { return context().today(); };
    m_date = named(input::makeDateEditor(fields, today), "noAccessDate", tr("Day"));
    m_time = named(input::makeTimeEditor(fields), "noAccessTime", tr("Time"));
    m_who = named(input::makeTextEditor(fields), "noAccessWho", tr("Who went"));
    std::vector<input::ChoiceItem> channels;
    for (const auto channel : {Channel::Visit, Channel::Telephone, Channel::TextMessage, Channel::Email,
                               Channel::Letter, Channel::Other}) {
        channels.push_back({shell::coded(reg::codeOf(channel)), channelWord(channel)});
    }
    m_how = named(input::makeListEditor(fields, channels), "noAccessHow", tr("How"));
    m_left = named(input::makeTextEditor(fields), "noAccessLeft", tr("What was left or sent"));
    m_response = named(input::makeTextEditor(fields), "noAccessResponse", tr("What they answered"));
    m_next = named(input::makeTextEditor(fields), "noAccessNext", tr("Next step"));
    m_nextOn = named(input::makeDateEditor(fields, today), "noAccessNextOn", tr("Next step on"));
    for (auto* field : {m_date, m_time, m_who, m_how}) {
        fields->add(field);
    }
    fields->add(m_left, 2);
    fields->add(m_response, 2);
    fields->add(m_next, 2);
    fields->add(m_nextOn, 2);
    lines()->addWidget(fields);
    m_photographText = shell::softText({}, this);
    m_photographText->setObjectName(QStringLiteral("photographText"));
    lines()->addWidget(m_photographText);
    lines()->addWidget(shell::softText(
        tr("Inspectors look for three attempts at least. They are evidence of trying, never enough by "
           "themselves: try again, and tell the landlord."),
        this));
}

void NoAccessPage::show(const std::vector<reg::PremisesId>& premises) {
    m_premises = premises;
    m_photograph.reset();
    setHead(tr("No access: %1").arg(premisesText(context().shell.store, premises)));
    m_date->setText(qstring(calendar::isoText(context().today())));
    m_time->setText(qstring(wallTimeText(context().shell.clock.now())));
    m_how->setText(shell::coded(reg::codeOf(reg::Channel::Visit)));
    QString who;
    if (const auto file = context().due.dueFile(premises.front(), context().today());
        file && file->line.booking) {
        who = qstring(file->line.booking->engineerName);
    }
    m_who->setText(who);
    for (auto* field : {m_left, m_response, m_next, m_nextOn}) {
        field->setText({});
    }
    m_photographText->setText(tr("No photograph."));
}

void NoAccessPage::takeFocus() {
    shell::focusOn(m_who->text().isEmpty() ? m_who : m_left);
}

void NoAccessPage::choosePhotograph() {
    const auto files =
        context().shell.dialogs.openFiles(this, tr("Photograph"), tr("Pictures (*.jpg *.jpeg *.png *.pdf)"));
    if (files.isEmpty()) {
        return;
    }
    auto paper = paperFrom(files.front());
    if (!paper) {
        tell(tr("The photograph was not taken"), paper.error());
        return;
    }
    paper->ownerTable = "access_attempts";
    m_photograph = std::move(*paper);
    m_photographText->setText(tr("Photograph: %1").arg(qstring(m_photograph->name)));
}

std::optional<Instant> NoAccessPage::when() {
    const auto date = shell::dateTyped(m_date->text(), context().today());
    const bool dated = date && *date;
    m_date->setProblem(dated ? QString() : tr("Which day?"));
    Instant at{};
    const bool timed = dated && instantAt(**date, m_time->text().toStdString(), at);
    m_time->setProblem(!dated || timed ? QString() : tr("At what time? 9:30"));
    if (timed && at > context().shell.clock.now()) {
        m_date->setProblem(tr("That is yet to come."));
        return std::nullopt;
    }
    return timed ? std::optional(at) : std::nullopt;
}

Result<void> NoAccessPage::keepFor(reg::PremisesId premises, Instant at) {
    store::NoAccess what;
    what.attempt.premises = premises;
    what.attempt.at = at;
    what.attempt.who = m_who->text().trimmed().toStdString();
    what.attempt.channel = reg::channelFromCode(m_how->text().toStdString()).value_or(reg::Channel::Visit);
    what.attempt.left = m_left->text().trimmed().toStdString();
    what.attempt.response = m_response->text().trimmed().toStdString();
    what.attempt.nextStep = m_next->text().trimmed().toStdString();
    what.attempt.nextOn = shell::dateTyped(m_nextOn->text(), context().today()).value_or(std::nullopt);
    what.photograph = m_photograph;
    const auto bookings = context().shell.store.bookings(premises);
    const auto day = FixedClock(at).today("Europe/London");
    for (const auto& booking : bookings.value_or(std::vector<reg::Booking>())) {
        if (booking.state == reg::BookingState::Booked && booking.date == day) {
            what.booking = booking.id;
        }
    }
    return context().due.logNoAccess(what).map([](reg::AccessAttemptId) {});
}

void NoAccessPage::keep() {
    commit();
    const auto at = when();
    if (!at) {
        return;
    }
    if (m_who->text().trimmed().isEmpty()) {
        m_who->setProblem(tr("Who went?"));
        shell::focusOn(m_who);
        return;
    }
    const auto kept = context().shell.store.together(
        [&]() -> Result<void> {
            for (const auto& premises : m_premises) {
                if (const auto one = keepFor(premises, *at); !one) {
                    return one;
                }
            }
            return {};
        },
        store::Store::Steps::One);
    if (!kept) {
        tell(tr("It was not kept"), kept.error());
        return;
    }
    finish(tr("Kept. Next: try again, and tell the landlord."));
}

Result<store::NewAttachment> paperFrom(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) {
        return fail(ErrorCode::FileUnreadable, {path.toStdString(), file.errorString().toStdString()});
    }
    const QByteArray bytes = file.readAll();
    const std::string name = QFileInfo(path).fileName().toStdString();
    const auto picture =
        exchange::readPicture(std::string_view(bytes.constData(), static_cast<std::size_t>(bytes.size())),
                              exchange::PicturePlace::Remove, name);
    if (!picture) {
        return tl::unexpected<Error>(picture.error());
    }
    store::NewAttachment paper;
    paper.name = name;
    paper.mediaType = picture->mediaType;
    paper.bytes = picture->bytes;
    const QImage image = QImage::fromData(bytes);
    if (!image.isNull()) {
        QByteArray small;
        QBuffer buffer(&small);
        buffer.open(QIODevice::WriteOnly);
        image.scaled(kThumbnail, kThumbnail, Qt::KeepAspectRatio, Qt::SmoothTransformation)
            .save(&buffer, "PNG");
        paper.thumbnail = small.toStdString();
    }
    return paper;
}

}  // namespace hearth::ui::due
