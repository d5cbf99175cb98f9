// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/sentence_texts.h"

#include <array>

namespace hearth::ui::words {

namespace {

using rulebook::Say;

constexpr std::array kDeadlines{
    SayText{Say::CheckDueBy, QT_TRANSLATE_NOOP("Words", "Due by %1.")},
    SayText{Say::CheckDueEither,
            QT_TRANSLATE_NOOP(
                "Words",
                "What was read leaves open whether it is due by %1 or by %2. Keep the first date, or ask.")},
    SayText{Say::CheckOverdue, QT_TRANSLATE_NOOP("Words", "It was due by %1. Have it checked now.")},
    SayText{Say::CheckCountryMissing, QT_TRANSLATE_NOOP("Words", "Say in which country: the law differs.")},
    SayText{Say::CheckBasisMissing,
            QT_TRANSLATE_NOOP("Words",
                              "Enter when the appliance was installed, when the lease begins, or the date "
                              "from which the twelve months run.")},
    SayText{Say::CheckDatesCrossed,
            QT_TRANSLATE_NOOP("Words", "The check on %1 lies before %2. Correct the dates.")},
    SayText{Say::CheckCountsInWindow,
            QT_TRANSLATE_NOOP("Words",
                              "The check on %1 lies in the two months that end with %2: it counts as made on "
                              "that date (regulation 36A(1)).")},
    SayText{
        Say::CheckCountsEarly,
        QT_TRANSLATE_NOOP(
            "Words",
            "The check on %1 came before the two months that end with %2: twelve months run from it anew.")},
    SayText{Say::CheckCountsEdge,
            QT_TRANSLATE_NOOP("Words",
                              "Whether the check on %1 lies in the two months that end with %2 goes by how "
                              "they are counted. Ask, or keep the earlier date.")},
    SayText{Say::CheckCountsInTime, QT_TRANSLATE_NOOP("Words", "The check on %1 was in time for %2.")},
    SayText{Say::CheckCountsLate,
            QT_TRANSLATE_NOOP("Words", "The check on %1 came after %2, when it was due.")},
    SayText{Say::CheckCountsPutOff,
            QT_TRANSLATE_NOOP("Words",
                              "The check on %1 used the one time that a first check may be put off, to %2.")},
    SayText{
        Say::CheckFromInstalled,
        QT_TRANSLATE_NOOP(
            "Words", "Twelve months from the installation on %1 (in Great Britain regulation 36(3)(a)).")},
    SayText{Say::CheckFromLease,
            QT_TRANSLATE_NOOP("Words",
                              "A check is to be made in the twelve months before the "
                              "lease begins on %1 (in Great Britain regulation 36(3)(b)).")},
    SayText{Say::CheckFromDate, QT_TRANSLATE_NOOP("Words", "Twelve months from %1.")},
    SayText{Say::CheckFromKept,
            QT_TRANSLATE_NOOP(
                "Words", "Twelve months from %1, the date for which the check counts (regulation 36A(1)).")},
    SayText{Say::CheckFromEdge, QT_TRANSLATE_NOOP("Words",
                                                  "Twelve months from the check on %1, or from %2 if it "
                                                  "counts for that date (regulation 36A(1)).")},
    SayText{Say::CheckFromLeaseCheck, QT_TRANSLATE_NOOP("Words",
                                                        "Twelve months from the check on %1; whether they "
                                                        "run from %2, when the lease begins, was not read.")},
    SayText{Say::CheckPutOff,
            QT_TRANSLATE_NOOP(
                "Words",
                "The first check was due by %1; once, it may be put off to %2 to come with the others.")},
    SayText{Say::CheckAfterPutOff, QT_TRANSLATE_NOOP("Words",
                                                     "How the next date follows after a first check that was "
                                                     "put off was not read (regulation 36A(2) and (3)).")},
    SayText{Say::CheckWindowOpens, QT_TRANSLATE_NOOP("Words",
                                                     "A check from %1 to %2 keeps the date; an earlier one "
                                                     "starts twelve months anew (regulation 36A(1)).")},
    SayText{
        Say::CheckLawFromMemory,
        QT_TRANSLATE_NOOP(
            "Words",
            "Northern Ireland's regulations (SR 2004/63) were not read: this is from memory. Look them up.")},
    SayText{Say::TenantCopyBy, QT_TRANSLATE_NOOP("Words",
                                                 "An existing tenant's copy of the record is due by %1, 28 "
                                                 "days after the check (regulation 36(6)).")},
    SayText{Say::TenantCopyBefore,
            QT_TRANSLATE_NOOP(
                "Words",
                "A new tenant's copy of the record is due before they move in on %1 (regulation 36(6)).")},
    SayText{Say::TenantCopyNoDay,
            QT_TRANSLATE_NOOP(
                "Words", "A new tenant's copy of the record is due before they move in (regulation 36(6)).")},
    SayText{
        Say::RecordCurrentUntil,
        QT_TRANSLATE_NOOP(
            "Words", "This record may be given to a new tenant up to %1, twelve months after the check.")},
    SayText{Say::RecordKeptUntil, QT_TRANSLATE_NOOP("Words", "Keep the record to %1.")},
    SayText{Say::RecordKeptOn, QT_TRANSLATE_NOOP("Words",
                                                 "Keep the record until two further checks have been made, "
                                                 "and to %1 at least (regulation 36(3)(c)).")},
};

}  // namespace

std::span<const SayText> deadlinesTexts() {
    return kDeadlines;
}

}  // namespace hearth::ui::words
