// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/leak_hunt_words.h"

#include "core/quantity/units.h"

#include <algorithm>

namespace hearth::ui::words {

namespace {

using judging::HuntLacks;
using judging::HuntPlace;
using quantity::Decimal;
using quantity::UnitCode;
using tightness::LeakPlacesSay;

constexpr int kLeakDecimals = 2;
constexpr int kHuntVolumeDecimals = 6;

QString litresAnHour(const Words& words, quantity::Flow flow) {
    return words.figure(
        {Decimal::rounded(flow.in(quantity::kLitrePerHour), kLeakDecimals), UnitCode::LitrePerHour});
}

/// "2 (hob)".
QString pipeName(const reg::VisitFile& file, std::size_t section) {
    const QString number = QString::number(section + 1);
    const QString leadsTo = QString::fromStdString(file.pipes[section].leadsTo).trimmed();
    return leadsTo.isEmpty() ? number : QStringLiteral("%1 (%2)").arg(number, leadsTo);
}

QString placeName(const HuntPlace& place, const reg::VisitFile& file, const Words& words) {
    switch (place.kind) {
        case HuntPlace::Kind::Meter:
            return words.say(QT_TRANSLATE_NOOP("Words", "the meter and its joints"));
        case HuntPlace::Kind::Pipe:
            return words.say(QT_TRANSLATE_NOOP("Words", "pipe %1"), {pipeName(file, *place.section)});
        case HuntPlace::Kind::Appliance:
            return place.section ? words.say(QT_TRANSLATE_NOOP("Words", "what is connected at pipe %1"),
                                             {pipeName(file, *place.section)})
                                 : words.say(QT_TRANSLATE_NOOP("Words", "the appliances"));
    }
    return {};
}

QString namesOf(const tightness::LeakPlace& group, const judging::LeakHunt& hunt, const reg::VisitFile& file,
                const Words& words) {
    QStringList names;
    for (const auto place : group.places) {
        names << placeName(hunt.places[place], file, words);
    }
    return names.join(QStringLiteral(", "));
}

QString testName(const judging::HuntedTest& hunted, const reg::VisitFile& file, const Words& words) {
    const auto at = std::find_if(file.tests.begin(), file.tests.end(),
                                 [&](const reg::Test& test) { return test.id == hunted.test; });
    const QString name = at != file.tests.end() && !at->label.empty()
                             ? QString::fromStdString(at->label)
                             : words.say(QT_TRANSLATE_NOOP("Words", "test %1"),
                                         {QString::number(at - file.tests.begin() + 1)});
    return hunted.isRetest
               ? words.say(QT_TRANSLATE_NOOP("Words", "%1, repeated with appliances isolated"), {name})
               : name;
}

QString shutText(const judging::HuntedTest& hunted, const reg::VisitFile& file, const Words& words) {
    QStringList shut;
    for (const auto section : hunted.shut) {
        shut << pipeName(file, section);
    }
    if (!hunted.reachedAppliances && hunted.lacks != HuntLacks::Appliances) {
        shut << words.say(QT_TRANSLATE_NOOP("Words", "appliances"));
    }
    return shut.isEmpty() ? words.say(QT_TRANSLATE_NOOP("Words", "nothing"))
                          : shut.join(QStringLiteral(", "));
}

QString leakText(const judging::HuntedTest& hunted, const Words& words) {
    switch (hunted.lacks) {
        case HuntLacks::Nothing:
            return words.say(QT_TRANSLATE_NOOP("Words", "%1 (%2 to %3)"),
                             {litresAnHour(words, hunted.leak->best), litresAnHour(words, hunted.leak->least),
                              litresAnHour(words, hunted.leak->most)});
        case HuntLacks::Appliances:
            return words.say(
                QT_TRANSLATE_NOOP("Words", "not compared: say whether appliances were connected"));
        case HuntLacks::PipesShut:
            return words.say(QT_TRANSLATE_NOOP("Words", "not compared: the list has no pipe \u201C%1\u201D"),
                             {QString::fromStdString(hunted.unread)});
        case HuntLacks::PipeOrder:
            return words.say(
                QT_TRANSLATE_NOOP("Words", "not compared: say in the pipe list what each pipe follows"));
        case HuntLacks::Volume:
            return words.say(QT_TRANSLATE_NOOP("Words", "not compared: the volume is not known"));
        case HuntLacks::Readings:
            return words.say(QT_TRANSLATE_NOOP("Words", "not compared: readings or times are missing"));
        case HuntLacks::Changed:
            return words.say(QT_TRANSLATE_NOOP("Words", "not compared: something was changed in between"));
        case HuntLacks::Gauge:
            return words.say(QT_TRANSLATE_NOOP("Words", "not compared: no gauge is chosen"));
    }
    return {};
}

}  // namespace

record::Table leakHuntTable(const judging::LeakHunt& hunt, const reg::VisitFile& file, const Words& words) {
    const auto text = [&](const char* english) { return words.say(english).toStdString(); };
    record::Table table;
    table.title = text(QT_TRANSLATE_NOOP("Words", "Looking for the leak: the tests compared"));
    table.columns = {
        {text(QT_TRANSLATE_NOOP("Words", "Test")), record::Align::Left, 1.6},
        {text(QT_TRANSLATE_NOOP("Words", "Shut off")), record::Align::Left, 1.6},
        {text(QT_TRANSLATE_NOOP("Words", "Volume reached")), record::Align::Right, 1.2},
        {text(QT_TRANSLATE_NOOP("Words", "Leak, and its 95 % interval")), record::Align::Right, 2.6}};
    for (const auto& hunted : hunt.tests) {
        const QString volume = hunted.volume
                                   ? words.figure({Decimal::rounded(hunted.volume->in(quantity::kCubicMetre),
                                                                    kHuntVolumeDecimals),
                                                   UnitCode::CubicMetre})
                                   : QStringLiteral("\u2014");
        QString leak = leakText(hunted, words);
        if (hunted.isByTrace) {
            leak = words.say(QT_TRANSLATE_NOOP("Words", "%1, by its trace"), {leak});
        }
        table.rows.push_back({testName(hunted, file, words).toStdString(),
                              shutText(hunted, file, words).toStdString(), volume.toStdString(),
                              leak.toStdString()});
    }
    QString note = leakHuntBesideVerdict(words);
    if (std::any_of(hunt.tests.begin(), hunt.tests.end(), [](const judging::HuntedTest& test) {
            return test.lacks == HuntLacks::Nothing && test.isVolumeExact;
        })) {
        note +=
            QLatin1Char(' ') + words.say(QT_TRANSLATE_NOOP("Words",
                                                           "Where nothing is said of how far a volume may "
                                                           "be off, it is taken as exact."));
    }
    table.note = note.toStdString();
    return table;
}

QString leakHuntMeaning(const judging::LeakHunt& hunt, const reg::VisitFile& file, const Words& words) {
    QStringList leaking;
    for (const auto& group : hunt.told.groups) {
        if (group.surelyLeaks()) {
            leaking << namesOf(group, hunt, file, words);
        }
    }
    switch (hunt.told.says) {
        case LeakPlacesSay::NothingToCompare:
            return words.say(QT_TRANSLATE_NOOP(
                "Words", "Nothing to compare yet: test again with one branch shut off, and say which."));
        case LeakPlacesSay::Disagree:
            return words.say(
                QT_TRANSLATE_NOOP("Words",
                                  "The tests do not agree: no leaks together make such readings. The gas "
                                  "warmed or cooled, a valve "
                                  "let by, or something else was changed between them. Test again."));
        case LeakPlacesSay::OneLeaks:
            return words.say(QT_TRANSLATE_NOOP("Words", "There must be a leak here: %1."),
                             {leaking.join(QString())});
        case LeakPlacesSay::SeveralLeak:
            return words.say(QT_TRANSLATE_NOOP("Words", "More than one place leaks: %1."),
                             {leaking.join(QStringLiteral("; "))});
        case LeakPlacesSay::Somewhere:
            return words.say(QT_TRANSLATE_NOOP("Words",
                                               "Something leaks, and these tests do not tell where. Shut off "
                                               "one branch more and test again, "
                                               "longer or with a finer gauge."));
        case LeakPlacesSay::NoneShown:
            return words.say(QT_TRANSLATE_NOOP(
                "Words", "None of these tests shows a leak. That is not to say that there is none."));
    }
    return {};
}

QStringList leakHuntPlaces(const judging::LeakHunt& hunt, const reg::VisitFile& file, const Words& words) {
    QStringList lines;
    for (const auto& group : hunt.told.groups) {
        const QString names = namesOf(group, hunt, file, words);
        lines << (group.surelyLeaks()
                      ? words.say(QT_TRANSLATE_NOOP("Words", "%1: %2 to %3"),
                                  {names, litresAnHour(words, group.least), litresAnHour(words, group.most)})
                      : words.say(QT_TRANSLATE_NOOP("Words", "%1: no leak shown, %2 at most"),
                                  {names, litresAnHour(words, group.most)}));
    }
    return lines;
}

QString leakHuntBesideVerdict(const Words& words) {
    return words.say(QT_TRANSLATE_NOOP("Words",
                                       "This helps the search. The verdict is by the standard's rule of each "
                                       "test's readings, and what no test "
                                       "shows to leak is not thereby tight."));
}

bool wasLeakHunted(const judging::LeakHunt& hunt) {
    return hunt.isOne() && std::any_of(hunt.tests.begin(), hunt.tests.end(),
                                       [](const judging::HuntedTest& test) { return !test.shut.empty(); });
}

}  // namespace hearth::ui::words
