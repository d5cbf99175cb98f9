// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/firm/letters_part.h"

#include "ui/words/letter_words.h"

#include <QFrame>

namespace hearth::ui::firm {

using reg::LetterKind;
using reg::Placeholder;
using words::qstring;

namespace {

constexpr int kTextLines = 11;
// One of the demonstration's landlords and premises (resources/demo/scenario.json).
constexpr const char* kSampleCustomer = "Sallowby Lettings";
constexpr const char* kSamplePremises = "Flat 1, Wrenlow Maltings, Barge Lane, Nether Wrenlow, QW7 1AC";
constexpr int kSampleDaysUntilDue = 56;  // a first reminder eight weeks before (common practice, no source)
constexpr int kSampleDaysSince = 3;

std::string& textIn(reg::Firm& firm, LetterKind kind) {
    switch (kind) {
        case LetterKind::Reminder:
            return firm.reminderText;
        case LetterKind::NoAccess:
            return firm.noAccessText;
        case LetterKind::Covering:
            break;
    }
    return firm.coverText;
}

QString braced(Placeholder placeholder) {
    return u'{' + shell::coded(reg::codeOf(placeholder)) + u'}';
}

}  // namespace

LettersPart::LettersPart(const shell::Context& context, QWidget* parent)
    : QWidget(parent),
      m_context(context),
      m_inRecord(std::make_unique<words::Words>()),
      m_placeholders(shell::softText({}, this)),
      m_state(shell::softText({}, this)),
      m_preview(shell::bodyText({}, this)),
      m_back(new shell::KeyButton(tr("Back to the text we ship"), shell::ButtonKind::Quiet, this)) {
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(look::kGap);
    lines->addWidget(shell::headingText(tr("Letters"), this));
    makeKinds(lines);
    makeText(lines);
    m_placeholders->setObjectName(QStringLiteral("letterPlaceholders"));
    lines->addWidget(m_placeholders);
    auto* row = new QHBoxLayout;
    row->setSpacing(look::kGap);
    m_state->setObjectName(QStringLiteral("letterState"));
    m_back->setObjectName(QStringLiteral("shippedLetterButton"));
    row->addWidget(m_state, 1);
    row->addWidget(m_back);
    lines->addLayout(row);
    connect(m_back, &QPushButton::clicked, this, &LettersPart::backToShipped);
    lines->addWidget(shell::softText(
        tr("As it would go to one of the demonstration's premises, with your firm's name and numbers:"),
        this));
    m_preview->setObjectName(QStringLiteral("letterPreview"));
    m_preview->setFrameShape(QFrame::StyledPanel);
    m_preview->setMargin(look::kGap);
    m_preview->setTextFormat(Qt::PlainText);
    lines->addWidget(m_preview);
}

LettersPart::~LettersPart() = default;

void LettersPart::makeKinds(QVBoxLayout* lines) {
    std::vector<input::ChoiceItem> choices;
    for (const auto kind : reg::kLetterKinds) {
        choices.push_back({shell::coded(reg::codeOf(kind)), words::letterKind(m_context.words, kind)});
    }
    m_kinds = input::makeChoiceEditor(this, choices);
    m_kinds->setLabel(tr("Which letter"));
    m_kinds->setObjectName(QStringLiteral("letterKind"));
    lines->addWidget(m_kinds);
    connect(m_kinds, &input::Editor::committed, this, [this](const QString& code) {
        showKind(reg::letterKindFromCode(code.toStdString()).value_or(m_kind));
    });
}

void LettersPart::makeText(QVBoxLayout* lines) {
    m_text = input::makeLongTextEditor(this, kTextLines);
    m_text->setLabel(tr("Text of the letter"));
    m_text->setObjectName(QStringLiteral("letterText"));
    m_text->setReadOnly(m_context.store.isReadOnly());
    lines->addWidget(m_text);
    shell::keepOnCommit(m_text, m_context.words, [this](const QString& text) { return keep(text); });
    connect(m_text, &input::Editor::edited, this, &LettersPart::showPreview);
}

QString LettersPart::shipped() const {
    return words::shippedLetter(*m_inRecord, m_kind);
}

void LettersPart::refresh() {
    const auto firm = m_context.store.firm();
    if (firm && m_inRecord->language() != qstring(firm->language)) {
        m_inRecord = std::make_unique<words::Words>(qstring(firm->language));
    }
    showKind(m_kind);
}

void LettersPart::showKind(LetterKind kind) {
    m_kind = kind;
    m_kinds->setText(shell::coded(reg::codeOf(kind)));
    auto firm = m_context.store.firm();
    const std::string own = firm ? textIn(*firm, kind) : std::string();
    const auto refused = m_refused.find(kind);
    m_text->setText(refused != m_refused.end() ? refused->second : own.empty() ? shipped() : qstring(own));
    const auto checked = reg::checkLetter(kind, m_text->text().toStdString());
    m_text->setProblem(checked ? QString() : m_context.words.error(checked.error()));
    m_state->setText(!firm         ? m_context.words.error(firm.error())
                     : own.empty() ? tr("This is the text that we ship.")
                                   : tr("This is your own text."));
    m_back->setEnabled(!m_context.store.isReadOnly() && (!own.empty() || refused != m_refused.end()));
    QStringList names;
    for (const auto placeholder : reg::placeholdersOf(kind)) {
        names << braced(placeholder) + u' ' + words::placeholder(m_context.words, placeholder);
    }
    m_placeholders->setText(
        tr("What is filled in for each letter: %1.").arg(names.join(QStringLiteral(" · "))));
    showPreview();
}

Result<void> LettersPart::keep(const QString& text) {
    const QString typed = text.trimmed();
    if (const auto checked = reg::checkLetter(m_kind, typed.toStdString()); !checked) {
        m_refused[m_kind] = text;
        m_back->setEnabled(!m_context.store.isReadOnly());
        return checked;
    }
    auto firm = m_context.store.firm();
    if (!firm) {
        return tl::unexpected<Error>(firm.error());
    }
    // Nothing, and the shipped text as it stands, are the shipped text: it follows the records' language.
    textIn(*firm, m_kind) = typed == shipped() ? std::string() : typed.toStdString();
    const auto kept = m_context.store.saveFirm(*firm);
    if (kept) {
        m_refused.erase(m_kind);
        showKind(m_kind);
    }
    return kept;
}

void LettersPart::showPreview() {
    const auto letter = reg::fillLetter(m_kind, m_text->text().trimmed().toStdString(), sample());
    m_preview->setInk(letter ? look::Role::Ink : look::Role::Fail);
    m_preview->setText(letter ? qstring(*letter) : m_context.words.error(letter.error()));
}

void LettersPart::backToShipped() {
    auto firm = m_context.store.firm();
    Result<void> done = firm ? Result<void>() : Result<void>(tl::unexpected<Error>(firm.error()));
    if (firm && !textIn(*firm, m_kind).empty()) {
        textIn(*firm, m_kind).clear();
        done = m_context.store.saveFirm(*firm);
    }
    if (!done) {
        m_context.dialogs.tell(this, tr("The text was not changed"), m_context.words.error(done.error()));
        return;
    }
    m_refused.erase(m_kind);
    showKind(m_kind);
    shell::focusOn(m_text);
    m_context.navigator.say(tr("The text that we ship is back. Ctrl+Z brings your own back."));
}

reg::LetterValues LettersPart::sample() const {
    const auto firm = m_context.store.firm().value_or(reg::Firm());
    const auto today = m_context.clock.today("Europe/London");
    const auto date = [&](int days) {
        return m_inRecord->date(calendar::addDays(today, days)).toStdString();
    };
    return {{Placeholder::Customer, kSampleCustomer},
            {Placeholder::Premises, kSamplePremises},
            {Placeholder::DateDue, date(kSampleDaysUntilDue)},
            {Placeholder::Attempted, date(-kSampleDaysSince)},
            {Placeholder::Worked, date(0)},
            {Placeholder::Today, date(0)},
            {Placeholder::Firm, firm.name},
            {Placeholder::Telephone, firm.telephone},
            {Placeholder::Email, firm.email},
            {Placeholder::Registration, firm.registrationNumber}};
}

}  // namespace hearth::ui::firm
