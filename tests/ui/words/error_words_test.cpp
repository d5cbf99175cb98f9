// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/kind.h"
#include "tests/ui/words/languages.h"
#include "ui/words/words.h"

#include <QFile>
#include <QRegularExpression>

#include <set>

namespace hearth::ui::words {
namespace {

/// How many details the comments of core/base/error_code.h promise, in the order of the enumeration.
std::vector<int> promisedDetails() {
    QFile file(QStringLiteral(HEARTH_SOURCE_DIR "/core/base/error_code.h"));
    if (!file.open(QIODevice::ReadOnly)) {
        return {};
    }
    const QString text = QString::fromUtf8(file.readAll());
    const auto from = text.indexOf(u"enum class ErrorCode {");
    const auto body = text.mid(from, text.indexOf(u"};", from) - from).section(u'{', 1);
    std::vector<int> counts;
    static const QRegularExpression kName(QStringLiteral("^\\s*([A-Z]\\w*),\\s*//\\s*(.*)$"));
    static const QRegularExpression kBrackets(QStringLiteral("\\(.*\\)"));
    for (const auto& line : body.split(u'\n')) {
        const auto match = kName.match(line);
        if (match.hasMatch()) {
            QString named = match.captured(2);
            named = named.remove(kBrackets).trimmed();
            counts.push_back(named == u"-" ? 0 : static_cast<int>(named.count(u',')) + 1);
        }
    }
    return counts;
}

TEST(Errors, EachHasASentenceThatSaysItsDetails) {
    const auto promised = promisedDetails();
    const auto codes = allErrorCodes();
    ASSERT_EQ(promised.size(), codes.size()) << "the comments of error_code.h were not read as meant";
    for (const auto& language : testing::languages()) {
        const Words words(language);
        for (std::size_t i = 0; i < codes.size(); ++i) {
            Error error{codes[i], {}};
            for (int detail = 0; detail < promised[i]; ++detail) {
                error.details.push_back("detail" + std::to_string(detail + 1));
            }
            const QString text = words.error(error);
            const auto code = std::string(codeText(codes[i]));
            EXPECT_NE(text.toStdString(), code) << "no sentence";
            EXPECT_TRUE(testing::isTranslated(text, words)) << code;
            EXPECT_TRUE(testing::isFilled(text)) << code << ": " << text;
            // A detail that is only for the log may stay out: the code of a kind of row, a message's id.
            for (const auto& detail : error.details) {
                EXPECT_TRUE(text.contains(QString::fromStdString(detail)))
                    << code << " leaves out " << detail << ": " << text;
            }
        }
    }
}

TEST(Errors, SayWhatWasKeptAndWhatToDo) {
    const Words words;
    for (const auto code : allErrorCodes()) {
        const QString text = words.error({code, {"A", "B", "C"}});
        EXPECT_TRUE(text.endsWith(u'.')) << text;
        EXPECT_GE(text.count(QRegularExpression(QStringLiteral("[.;]"))), 2) << text;
    }
}

TEST(Errors, NeverShowAHole) {
    const Words words;
    for (const auto code : allErrorCodes()) {
        EXPECT_TRUE(testing::isFilled(words.error({code, {}}))) << codeText(code);
    }
}

TEST(Errors, NameWhatARecordLacksByItsLabel) {
    const Words words;
    const Error error{
        ErrorCode::RecordIncomplete,
        {std::string(reg::infoOf(reg::Item::TightEnd).code),
         std::string(record::fieldCode(record::Field::EngineerCard)), "test.of_a_newer_program"}};
    EXPECT_TRUE(words.error(error).contains(
        QStringLiteral("Tightness, end; Engineer's card number; test.of_a_newer_program")))
        << words.error(error);
}

TEST(Errors, NameARuleAndItsFaultInWords) {
    const Words words;
    const Error error{ErrorCode::RuleValueUnusable,
                      {std::string(rulebook::ruleText(rulebook::Rule::TestPressure)), "range_reversed"}};
    EXPECT_EQ(
        words.error(error),
        QStringLiteral("The value for “Test pressure” can't be used: the least is greater than the most. "
                       "The rule book is as it was; correct the value and save again."));
}

TEST(BandDoubts, NameTheBandFromOne) {
    const Words words;
    for (int i = 0; i <= static_cast<int>(rulebook::BandSlip::LeakRateOutOfOrder); ++i) {
        const auto slip = static_cast<rulebook::BandSlip>(i);
        const QString text = words.bandDoubt({slip, 1});
        EXPECT_FALSE(text.contains(QString::fromUtf8(rulebook::slipText(slip).data()))) << text;
        EXPECT_EQ(text.contains(u'2'), slip != rulebook::BandSlip::NoBands) << text;
    }
}

// Every code that RuleBook::lay gives for an unusable value has its words.
TEST(ValueFaults, AreAllWorded) {
    const Words words;
    for (const char* code : {"missing", "shape", "unit", "not_positive", "range_reversed", "no_bands",
                             "volume_not_rising", "drop_not_shrinking", "leak_rate_out_of_order"}) {
        EXPECT_NE(words.valueFault(code), QString::fromUtf8(code));
    }
}

}  // namespace
}  // namespace hearth::ui::words
