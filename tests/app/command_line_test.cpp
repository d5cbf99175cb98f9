// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command_line.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <string>
#include <vector>

namespace {

using namespace hearth::app;

QStringList wordsOf(const char* line) {
    return QString::fromUtf8(line).split(QLatin1Char(' '), Qt::SkipEmptyParts);
}

TEST(CommandLineTest, NothingOpensTheWindow) {
    const auto line = parseCommandLine({});
    ASSERT_TRUE(line);
    EXPECT_EQ(line->verb, Verb::Window);
    EXPECT_FALSE(line->store || line->scheme || line->language || line->demonstration);
}

TEST(CommandLineTest, EveryCommandIsUnderstood) {
    const std::vector<std::pair<const char*, Verb>> cases{
        {"visits", Verb::Visits},
        {"visits mill lane", Verb::Visits},
        {"judge 12345678", Verb::Judge},
        {"judge --store a.hearth mill lane", Verb::Judge},
        {"issue 12345678", Verb::Issue},
        {"issue 12345678 --to out.pdf --replace", Verb::Issue},
        {"issue 12345678 --revises ABC-000001 --reason typing", Verb::Issue},
        {"records", Verb::Records},
        {"pdf ABC-000001 --to out.pdf", Verb::Pdf},
        {"pdf ABC-000001 --revision 1 --to=out.pdf", Verb::Pdf},
        {"rules", Verb::Rules},
        {"rules --unconfirmed let-by", Verb::Rules},
        {"health", Verb::Health},
        {"health a.hearth b.hearth", Verb::Health},
        {"backup --to copy.hearth", Verb::BackUp},
        {"backup", Verb::BackUp},
        {"restore old.hearth --look", Verb::Restore},
        {"restore old.hearth.sealed --passphrase -", Verb::Restore},
        {"demonstration --into folder", Verb::Demonstration},
        {"blank warning_notice --into folder --copies 20", Verb::Blank},
        {"help", Verb::Help},
        {"help judge", Verb::Help},
        {"judge --help", Verb::Help},
        {"--help", Verb::Help},
        {"-h", Verb::Help},
        {"version", Verb::Version},
        {"--version", Verb::Version},
        {"--scheme dark", Verb::Window},
        {"--demonstration --language en_XA", Verb::Window},
        {"--store a.hearth", Verb::Window},
    };
    for (const auto& [text, verb] : cases) {
        const auto line = parseCommandLine(wordsOf(text));
        ASSERT_TRUE(line) << text << ": " << usageText(line.error()).toStdString();
        EXPECT_EQ(line->verb, verb) << text;
    }
}

TEST(CommandLineTest, ValuesAreKeptAsTyped) {
    const auto line = parseCommandLine({QStringLiteral("issue"), QStringLiteral("14"),
                                        QStringLiteral("mill lane"), QStringLiteral("--to=a b=c.pdf"),
                                        QStringLiteral("--revises"), QStringLiteral("ABC-000002"),
                                        QStringLiteral("--reason"), QStringLiteral("wrong meter; ŷ")});
    ASSERT_TRUE(line);
    EXPECT_EQ(line->words, (QStringList{QStringLiteral("14"), QStringLiteral("mill lane")}));
    EXPECT_EQ(line->to, QStringLiteral("a b=c.pdf"));
    EXPECT_EQ(line->reason, QStringLiteral("wrong meter; ŷ"));
}

TEST(CommandLineTest, AfterTwoDashesEverythingIsAWord) {
    const auto line = parseCommandLine(wordsOf("visits -- --store"));
    ASSERT_TRUE(line);
    EXPECT_EQ(line->words, QStringList{QStringLiteral("--store")});
}

TEST(CommandLineTest, WhatIsWrongIsNamed) {
    struct Case {
        const char* text;
        UsageFault fault;
        const char* word;
    };
    const std::vector<Case> cases{
        {"jugde 1", UsageFault::WordUnknown, "jugde"},
        {"help jugde", UsageFault::WordUnknown, "jugde"},
        {"visits --colour red", UsageFault::OptionUnknown, "--colour"},
        {"visits -x", UsageFault::OptionUnknown, "-x"},
        {"visits --to a.pdf", UsageFault::OptionNotHere, "--to"},
        {"visits --unconfirmed", UsageFault::OptionNotHere, "--unconfirmed"},
        {"--reason x --revises y", UsageFault::OptionNotHere, "--reason"},
        {"judge 1 --scheme dark", UsageFault::OptionNotHere, "--scheme"},
        {"visits --store a --demonstration", UsageFault::OptionNotHere, "--demonstration"},
        {"visits --store", UsageFault::ValueMissing, "--store"},
        {"visits --store=", UsageFault::ValueWrong, "--store"},
        {"--scheme pink", UsageFault::ValueWrong, "--scheme"},
        {"issue 1 --replace=yes", UsageFault::ValueWrong, "--replace"},
        {"pdf A-1 --to x --revision none", UsageFault::ValueWrong, "--revision"},
        {"pdf A-1 --to x --revision 0", UsageFault::ValueWrong, "--revision"},
        {"judge", UsageFault::WordsMissing, "VISIT"},
        {"pdf --to a.pdf", UsageFault::WordsMissing, "NUMBER"},
        {"pdf A-1", UsageFault::WordsMissing, "--to FILE"},
        {"restore", UsageFault::WordsMissing, "BACKUP"},
        {"backup --look", UsageFault::OptionNotHere, "--look"},
        {"demonstration", UsageFault::WordsMissing, "--into FOLDER"},
        {"blank warning_notice", UsageFault::WordsMissing, "--into FOLDER"},
        {"blank warning_notice --into folder --copies 201", UsageFault::ValueWrong, "--copies"},
        {"issue 1 --revises A-1", UsageFault::WordsMissing, "--reason TEXT"},
        {"issue 1 --reason x", UsageFault::WordsMissing, "--revises NUMBER"},
        {"pdf A-1 A-2 --to x", UsageFault::WordsTooMany, "A-2"},
        {"version now", UsageFault::WordsTooMany, "now"},
    };
    for (const auto& [text, fault, word] : cases) {
        const auto line = parseCommandLine(wordsOf(text));
        ASSERT_FALSE(line) << text;
        EXPECT_EQ(line.error().fault, fault) << text;
        EXPECT_EQ(line.error().word.toStdString(), word) << text;
        EXPECT_THAT(usageText(line.error()).toStdString(), testing::HasSubstr(word)) << text;
        EXPECT_THAT(usageText(line.error()).toStdString(), testing::HasSubstr("Usage: hearthledger")) << text;
    }
}

TEST(CommandLineTest, HelpNamesEveryCommandAndOption) {
    const std::string all = helpText().toStdString();
    for (const char* word :
         {"rules",        "--unconfirmed", "visits",     "judge",      "issue",
          "records",      "pdf",           "health",     "backup",     "demonstration",
          "help",         "version",       "--store",    "--to",       "--into",
          "--revises",    "--reason",      "--revision", "restore",    "--look",
          "--passphrase", "--replace",     "--scheme",   "--language", "--demonstration"}) {
        EXPECT_THAT(all, testing::HasSubstr(word));
    }
    EXPECT_THAT(helpText(QStringLiteral("judge")).toStdString(),
                testing::HasSubstr("hearthledger judge VISIT"));
    EXPECT_THAT(helpText(QStringLiteral("judge")).toStdString(), testing::Not(testing::HasSubstr("--into")));
}

}  // namespace
