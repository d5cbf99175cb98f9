// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/files.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace {

using namespace hearth;
using namespace hearth::app;

QByteArray contents(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray("unreadable");
}

TEST(FilesTest, WritesANewFile) {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("a b ŷ.pdf"));
    ASSERT_TRUE(writeFile(path, std::string("one\0two", 7), IfThere::Refuse));
    EXPECT_EQ(contents(path), QByteArray("one\0two", 7));
}

TEST(FilesTest, OtherContentsAreOnlyReplacedWhenAsked) {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("a.pdf"));
    ASSERT_TRUE(writeFile(path, "one", IfThere::Refuse));
    EXPECT_TRUE(writeFile(path, "one", IfThere::Refuse)) << "the same again is no harm";
    const auto refused = writeFile(path, "two", IfThere::Refuse);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::FileUnwritable);
    EXPECT_EQ(contents(path), "one");
    EXPECT_TRUE(writeFile(path, "two", IfThere::Replace));
    EXPECT_EQ(contents(path), "two");
}

TEST(FilesTest, AFolderThatIsNotThereIsSaid) {
    const QTemporaryDir folder;
    const auto refused = writeFile(folder.filePath(QStringLiteral("none/a.pdf")), "one", IfThere::Refuse);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::FileUnwritable);
    EXPECT_TRUE(QDir(folder.path()).isEmpty());
}

TEST(FilesTest, AFolderGetsTheProposedName) {
    const QTemporaryDir folder;
    EXPECT_EQ(fileFor(folder.path(), QStringLiteral("x.pdf")), folder.filePath(QStringLiteral("x.pdf")));
    EXPECT_EQ(fileFor(QStringLiteral("y.pdf"), QStringLiteral("x.pdf")), QStringLiteral("y.pdf"));
}

}  // namespace
