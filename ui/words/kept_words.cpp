// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/kept_words.h"

#include "ui/words/text_table.h"

namespace hearth::ui::words {

namespace {

constexpr std::array kYesNos{
    Text<reg::YesNo>{reg::YesNo::NotSaid, QT_TRANSLATE_NOOP("Words", "not said yet")},
    Text<reg::YesNo>{reg::YesNo::Yes, QT_TRANSLATE_NOOP("Words", "Yes")},
    Text<reg::YesNo>{reg::YesNo::No, QT_TRANSLATE_NOOP("Words", "No")},
};
constexpr std::array kSendings{
    Text<reg::SendBy>{reg::SendBy::NotSaid, QT_TRANSLATE_NOOP("Words", "not said yet")},
    Text<reg::SendBy>{reg::SendBy::Post, QT_TRANSLATE_NOOP("Words", "By post")},
    Text<reg::SendBy>{reg::SendBy::Email, QT_TRANSLATE_NOOP("Words", "By e-mail")},
    Text<reg::SendBy>{reg::SendBy::Handed, QT_TRANSLATE_NOOP("Words", "Handed over")},
};
constexpr std::array kReminderBases{
    Text<reg::ReminderBasis>{reg::ReminderBasis::NotSaid, QT_TRANSLATE_NOOP("Words", "not said yet")},
    Text<reg::ReminderBasis>{reg::ReminderBasis::Consent, QT_TRANSLATE_NOOP("Words", "Has agreed to it")},
    Text<reg::ReminderBasis>{reg::ReminderBasis::EarlierWork,
                             QT_TRANSLATE_NOOP("Words", "Work done for them before")},
    Text<reg::ReminderBasis>{reg::ReminderBasis::Contract,
                             QT_TRANSLATE_NOOP("Words", "Part of a contract with them")},
};
constexpr std::array kOwners{
    Text<reg::Owner>{reg::Owner::NotSaid, QT_TRANSLATE_NOOP("Words", "not said yet")},
    Text<reg::Owner>{reg::Owner::Landlord, QT_TRANSLATE_NOOP("Words", "Landlord's")},
    Text<reg::Owner>{reg::Owner::Tenant, QT_TRANSLATE_NOOP("Words", "Tenant's own")},
    Text<reg::Owner>{reg::Owner::HomeOwner, QT_TRANSLATE_NOOP("Words", "Home owner's")},
};
constexpr std::array kFlueTypes{
    Text<reg::FlueType>{reg::FlueType::NotSaid, QT_TRANSLATE_NOOP("Words", "not said yet")},
    Text<reg::FlueType>{reg::FlueType::RoomSealed, QT_TRANSLATE_NOOP("Words", "Room sealed")},
    Text<reg::FlueType>{reg::FlueType::OpenFlued, QT_TRANSLATE_NOOP("Words", "Open flued")},
    Text<reg::FlueType>{reg::FlueType::Flueless, QT_TRANSLATE_NOOP("Words", "Flueless")},
};
constexpr std::array kChannels{
    Text<reg::Channel>{reg::Channel::Visit, QT_TRANSLATE_NOOP("Words", "In person")},
    Text<reg::Channel>{reg::Channel::Letter, QT_TRANSLATE_NOOP("Words", "Letter")},
    Text<reg::Channel>{reg::Channel::Telephone, QT_TRANSLATE_NOOP("Words", "Telephone")},
    Text<reg::Channel>{reg::Channel::TextMessage, QT_TRANSLATE_NOOP("Words", "Text message")},
    Text<reg::Channel>{reg::Channel::Email, QT_TRANSLATE_NOOP("Words", "E-mail")},
    Text<reg::Channel>{reg::Channel::Other, QT_TRANSLATE_NOOP("Words", "Another way")},
};
constexpr std::array kBookingStates{
    Text<reg::BookingState>{reg::BookingState::Proposed, QT_TRANSLATE_NOOP("Words", "Proposed")},
    Text<reg::BookingState>{reg::BookingState::Booked, QT_TRANSLATE_NOOP("Words", "Booked")},
    Text<reg::BookingState>{reg::BookingState::Done, QT_TRANSLATE_NOOP("Words", "Done")},
    Text<reg::BookingState>{reg::BookingState::Cancelled, QT_TRANSLATE_NOOP("Words", "Cancelled")},
    Text<reg::BookingState>{reg::BookingState::NoAccess, QT_TRANSLATE_NOOP("Words", "Nobody let us in")},
};
constexpr std::array kDangers{
    Text<reg::Danger>{reg::Danger::NotSaid, QT_TRANSLATE_NOOP("Words", "not said yet")},
    Text<reg::Danger>{reg::Danger::ImmediatelyDangerous, QT_TRANSLATE_NOOP("Words", "Immediately Dangerous")},
    Text<reg::Danger>{reg::Danger::AtRisk, QT_TRANSLATE_NOOP("Words", "At Risk")},
};
constexpr std::array kDoubts{
    Text<reg::Doubt>{
        reg::Doubt::MprnForm,
        QT_TRANSLATE_NOOP("Words", "A meter point reference has digits only. It is kept as typed.")},
    Text<reg::Doubt>{reg::Doubt::MprnLength,
                     QT_TRANSLATE_NOOP("Words",
                                       "A meter point reference has 6 to 11 digits, nearly always 10. It is "
                                       "kept as typed; compare it with the bill.")},
    Text<reg::Doubt>{
        reg::Doubt::MprnCheckDigits,
        QT_TRANSLATE_NOOP(
            "Words",
            "The last two digits do not fit the others. It is kept as typed; compare it with the bill.")},
    Text<reg::Doubt>{
        reg::Doubt::MprnOfLpg,
        QT_TRANSLATE_NOOP("Words", "A supply of LPG has no meter point reference. It is kept as typed.")},
    Text<reg::Doubt>{
        reg::Doubt::PostcodeForm,
        QT_TRANSLATE_NOOP("Words", "This has none of the forms of a postcode. It is kept as typed.")},
    Text<reg::Doubt>{reg::Doubt::TelephoneForm,
                     QT_TRANSLATE_NOOP("Words", "This can't be dialled as it stands. It is kept as typed.")},
    Text<reg::Doubt>{
        reg::Doubt::GcNumberForm,
        QT_TRANSLATE_NOOP("Words", "A GC number has seven digits, like 11-222-33. It is kept as typed.")},
    Text<reg::Doubt>{reg::Doubt::UprnForm,
                     QT_TRANSLATE_NOOP("Words", "A UPRN has 1 to 12 digits. It is kept as typed.")},
};

struct RecordLanguageText {
    std::string_view code;
    const char* english;
};
constexpr std::array kRecordLanguages{
    RecordLanguageText{"en", QT_TRANSLATE_NOOP("Words", "English")},
    RecordLanguageText{"cy", QT_TRANSLATE_NOOP("Words", "Welsh")},
    RecordLanguageText{"pl", QT_TRANSLATE_NOOP("Words", "Polish")},
    RecordLanguageText{"en+cy", QT_TRANSLATE_NOOP("Words", "English, with Welsh below it")},
    RecordLanguageText{"en+pl", QT_TRANSLATE_NOOP("Words", "English, with Polish below it")},
};

}  // namespace

QString yesNo(const Words& words, reg::YesNo value) {
    return words.say(textOf(kYesNos, value));
}
QString sendBy(const Words& words, reg::SendBy value) {
    return words.say(textOf(kSendings, value));
}
QString reminderBasis(const Words& words, reg::ReminderBasis value) {
    return words.say(textOf(kReminderBases, value));
}
QString owner(const Words& words, reg::Owner value) {
    return words.say(textOf(kOwners, value));
}
QString flueType(const Words& words, reg::FlueType value) {
    return words.say(textOf(kFlueTypes, value));
}
QString channel(const Words& words, reg::Channel value) {
    return words.say(textOf(kChannels, value));
}
QString bookingState(const Words& words, reg::BookingState value) {
    return words.say(textOf(kBookingStates, value));
}
QString danger(const Words& words, reg::Danger value) {
    return words.say(textOf(kDangers, value));
}
QString recordLanguage(const Words& words, const std::string& code) {
    for (const auto& language : kRecordLanguages) {
        if (language.code == code) {
            return words.say(language.english);
        }
    }
    return qstring(code);
}
QString doubt(const Words& words, const std::optional<reg::Doubt>& value) {
    return value ? words.say(textOf(kDoubts, *value)) : QString();
}

}  // namespace hearth::ui::words
