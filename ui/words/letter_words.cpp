// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/letter_words.h"

#include "ui/words/text_table.h"

namespace hearth::ui::words {

namespace {

using reg::LetterKind;
using reg::Placeholder;

constexpr std::array kLetterTitles{
    Text<LetterKind>{LetterKind::Reminder, QT_TRANSLATE_NOOP("Words", "Reminder")},
    Text<LetterKind>{LetterKind::NoAccess, QT_TRANSLATE_NOOP("Words", "No access")},
    Text<LetterKind>{LetterKind::Covering, QT_TRANSLATE_NOOP("Words", "Covering letter")},
};

constexpr std::array kPlaceholderMeanings{
    Text<Placeholder>{Placeholder::Customer, QT_TRANSLATE_NOOP("Words", "to whom the letter goes")},
    Text<Placeholder>{Placeholder::Premises, QT_TRANSLATE_NOOP("Words", "address of the premises")},
    Text<Placeholder>{Placeholder::DateDue, QT_TRANSLATE_NOOP("Words", "date by which the check is due")},
    Text<Placeholder>{Placeholder::Attempted, QT_TRANSLATE_NOOP("Words", "date when nobody could be let in")},
    Text<Placeholder>{Placeholder::Worked, QT_TRANSLATE_NOOP("Words", "date of the work")},
    Text<Placeholder>{Placeholder::Today, QT_TRANSLATE_NOOP("Words", "date of the letter")},
    Text<Placeholder>{Placeholder::Firm, QT_TRANSLATE_NOOP("Words", "name of the firm")},
    Text<Placeholder>{Placeholder::Telephone, QT_TRANSLATE_NOOP("Words", "telephone of the firm")},
    Text<Placeholder>{Placeholder::Email, QT_TRANSLATE_NOOP("Words", "e-mail of the firm")},
    Text<Placeholder>{Placeholder::Registration,
                      QT_TRANSLATE_NOOP("Words", "registration number of the firm")},
};

// The letters say nothing of the law: to whom which duty falls differs by country and by tenancy.
constexpr const char* kAskToRing =
    QT_TRANSLATE_NOOP("Words",
                      "Please ring us on %3 to agree a day. If somebody else has made the check, or the "
                      "address is no longer yours, tell us, and we will remind you no more.");
constexpr std::array kReminder{
    QT_TRANSLATE_NOOP("Words", "Dear %1,"),
    QT_TRANSLATE_NOOP("Words",
                      "Our records show that the yearly check of the gas appliances at %2 is due by %6."),
    kAskToRing,
    QT_TRANSLATE_NOOP("Words", "Yours faithfully,"),
};
constexpr std::array kReminderOfOverdue{
    QT_TRANSLATE_NOOP("Words", "Dear %1,"),
    QT_TRANSLATE_NOOP("Words",
                      "Our records show that the yearly check of the gas appliances at %2 was due by %6. We "
                      "know of none since."),
    kAskToRing,
    QT_TRANSLATE_NOOP("Words", "Yours faithfully,"),
};
constexpr std::array kReminderWithoutDay{
    QT_TRANSLATE_NOOP("Words", "Dear %1,"),
    QT_TRANSLATE_NOOP("Words",
                      "Our records show that the yearly check of the gas appliances at %2 falls due."),
    kAskToRing,
    QT_TRANSLATE_NOOP("Words", "Yours faithfully,"),
};
constexpr std::array kNoAccess{
    QT_TRANSLATE_NOOP("Words", "Dear %1,"),
    QT_TRANSLATE_NOOP("Words", "On %4 we came to %2 to check the gas appliances and could not get in."),
    QT_TRANSLATE_NOOP("Words",
                      "The check is there for the safety of everybody who lives in the house. Please ring "
                      "us on %3 to agree another day."),
    QT_TRANSLATE_NOOP("Words", "Yours faithfully,"),
};
constexpr std::array kCovering{
    QT_TRANSLATE_NOOP("Words", "Dear %1,"),
    QT_TRANSLATE_NOOP("Words", "With this letter comes the record of our work at %2 on %5."),
    QT_TRANSLATE_NOOP("Words",
                      "Please read first what it says of the outcome and of anything that is to be done, "
                      "keep it with the papers of the premises, and ring us on %3 about anything that is "
                      "not clear."),
    QT_TRANSLATE_NOOP("Words", "Yours faithfully,"),
};

QString braced(Placeholder placeholder) {
    return u'{' + qstring(std::string(reg::codeOf(placeholder))) + u'}';
}

/// Placeholders come in as arguments, so that no translation can change their names.
template <std::size_t N>
QString wholeLetter(const Words& words, const std::array<const char*, N>& paragraphs) {
    const QStringList arguments{braced(Placeholder::Customer),  braced(Placeholder::Premises),
                                braced(Placeholder::Telephone), braced(Placeholder::Attempted),
                                braced(Placeholder::Worked),    braced(Placeholder::DateDue)};
    QStringList said;
    for (const char* paragraph : paragraphs) {
        said << words.say(paragraph, arguments);
    }
    return said.join(QStringLiteral("\n\n")) + u'\n' + braced(Placeholder::Firm);
}

}  // namespace

QString letterKind(const Words& words, LetterKind kind) {
    return words.say(textOf(kLetterTitles, kind));
}

QString placeholder(const Words& words, Placeholder which) {
    return words.say(textOf(kPlaceholderMeanings, which));
}

QString shippedReminder(const Words& words, ReminderDay day) {
    switch (day) {
        case ReminderDay::ToCome:
            return wholeLetter(words, kReminder);
        case ReminderDay::Past:
            return wholeLetter(words, kReminderOfOverdue);
        case ReminderDay::NotKnown:
            break;
    }
    return wholeLetter(words, kReminderWithoutDay);
}

QString shippedLetter(const Words& words, LetterKind kind) {
    switch (kind) {
        case LetterKind::Reminder:
            return shippedReminder(words, ReminderDay::ToCome);
        case LetterKind::NoAccess:
            return wholeLetter(words, kNoAccess);
        case LetterKind::Covering:
            break;
    }
    return wholeLetter(words, kCovering);
}

}  // namespace hearth::ui::words
