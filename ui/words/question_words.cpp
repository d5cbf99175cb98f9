// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/question_words.h"

#include "ui/words/text_table.h"

namespace hearth::ui::words {

namespace {

using judging::Derived;
using judging::Group;
using judging::Question;

struct QuestionText {
    Question code;
    const char* text;
    const char* help;
};

constexpr std::array kQuestionTexts{
    QuestionText{
        Question::GasRate, QT_TRANSLATE_NOOP("Words", "What does this gas rate mean?"),
        QT_TRANSLATE_NOOP("Words",
                          "Heat input from the meter, against the data plate. All other appliances off.")},
    QuestionText{Question::RoomCo, QT_TRANSLATE_NOOP("Words", "What do these CO readings in a room mean?"),
                 QT_TRANSLATE_NOOP("Words", "A reading outdoors first. Never an all-clear.")},
};

using GroupText = Text<Group>;
constexpr std::array kRowNames{
    GroupText{Group::Section, QT_TRANSLATE_NOOP("Words", "Section %1")},
    GroupText{Group::Appliance, QT_TRANSLATE_NOOP("Words", "Appliance %1")},
    GroupText{Group::Vent, QT_TRANSLATE_NOOP("Words", "Vent %1")},
    GroupText{Group::Reading, QT_TRANSLATE_NOOP("Words", "Reading %1")},
};

using DerivedText = Text<Derived>;
constexpr std::array kDerivedTexts{
    DerivedText{Derived::GasFlow, QT_TRANSLATE_NOOP("Words", "Gas rate")},
    DerivedText{Derived::HeatInputGross, QT_TRANSLATE_NOOP("Words", "Heat input, gross")},
    DerivedText{Derived::HeatInputNet, QT_TRANSLATE_NOOP("Words", "Heat input, net")},
    DerivedText{Derived::TimeForTwoPercent,
                QT_TRANSLATE_NOOP("Words", "Time it for at least, to be within 2 %")},
};

const QuestionText* textOfQuestion(Question question) {
    const auto* found = std::find_if(kQuestionTexts.begin(), kQuestionTexts.end(),
                                     [&](const QuestionText& text) { return text.code == question; });
    return found == kQuestionTexts.end() ? nullptr : found;
}

}  // namespace

QString question(const Words& words, Question question) {
    const auto* text = textOfQuestion(question);
    return text == nullptr ? QString() : words.say(text->text);
}

QString questionHelp(const Words& words, Question question) {
    const auto* text = textOfQuestion(question);
    return text == nullptr ? QString() : words.say(text->help);
}

QString rowName(const Words& words, Group group, int row) {
    const char* text = textOf(kRowNames, group);
    return text == nullptr ? QString() : words.say(text, {QString::number(row + 1)});
}

QString derived(const Words& words, Derived derived) {
    const char* text = textOf(kDerivedTexts, derived);
    return text == nullptr ? QString() : words.say(text);
}

}  // namespace hearth::ui::words
