// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/mail.h"

#include "tests/support/files.h"

#include <QFile>
#include <QString>

#include <gtest/gtest.h>

namespace hearth::ui::shell {
namespace {

namespace fs = std::filesystem;

/// A folder that is the whole PATH, so that a stand-in for xdg-email is the one that is found.
class MailTest : public ::testing::Test {
  protected:
    void SetUp() override {
        m_path = qgetenv("PATH");
        qputenv("PATH", QByteArray::fromStdString(folder.path().string()));
    }
    void TearDown() override { qputenv("PATH", m_path); }
    void put(const std::string& script) const {
        const auto program = folder / "xdg-email";
        hearth::testing::writeFile(program, "#!/bin/sh\n" + script);
        fs::permissions(program, fs::perms::owner_all);
    }
    const Mail mail{QStringLiteral("m@harrow.example"),
                    QStringLiteral("Tŷ Gŵyr; a \"record\""),
                    QStringLiteral("Good day,\n\n$(reboot) & all"),
                    {QStringLiteral("/tmp/a b.pdf"), QStringLiteral("/tmp/a b.pdf.sig")}};
    hearth::testing::TempDir folder;

  private:
    QByteArray m_path;
};

TEST_F(MailTest, theProgramGetsEachPartAsItIs) {
    put("for word in \"$@\"; do printf '%s|' \"$word\"; done > " + (folder / "said").string() + "\n");
    ASSERT_TRUE(beginMail(mail));
    EXPECT_EQ(hearth::testing::readFile(folder / "said"),
              "--utf8|--subject|Tŷ Gŵyr; a \"record\"|--body|Good day,\n\n$(reboot) & all|--attach|/tmp/a "
              "b.pdf|--attach|/tmp/a b.pdf.sig|mailto:m@harrow.example|");
}

TEST_F(MailTest, withoutItOrWithoutAMailProgramThatIsSaid) {
    const auto missing = beginMail(mail);
    ASSERT_FALSE(missing);
    EXPECT_EQ(missing.error().code, ErrorCode::MailFailed);
    EXPECT_NE(missing.error().details.front().find("xdg-email"), std::string::npos);
    put("exit 3\n");
    const auto none = beginMail(mail);
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().code, ErrorCode::MailFailed);
    EXPECT_NE(none.error(), missing.error());
}

}  // namespace
}  // namespace hearth::ui::shell
