// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/plain_file.h"

#include "tests/core/store/as_nobody.h"
#include "tests/core/store/store_fixture.h"

#include <cerrno>

namespace hearth::store {
namespace {

using hearth::testing::readFile;
using hearth::testing::TempDir;
using hearth::testing::writeFile;

TEST(PlainFile, isCopiedByteForByte) {
    const TempDir folder;
    for (const std::size_t size : {0U, 1U, 65536U, 200001U}) {
        std::filesystem::remove(folder / "copy");
        writeFile(folder / "file", std::string(size, 'x'));
        copyChecked(folder / "file", folder / "copy");
        EXPECT_EQ(readFile(folder / "copy"), readFile(folder / "file"));
    }
}

TEST(PlainFile, isNeverWrittenOver) {
    const TempDir folder;
    writeFile(folder / "file", "new");
    writeFile(folder / "copy", "old");
    EXPECT_FALSE(guarded([&] { copyChecked(folder / "file", folder / "copy"); }));
    EXPECT_EQ(readFile(folder / "copy"), "old");
}

// Known answer: FIPS 180-4's example "abc" (NIST, "Secure Hash Standard", examples with intermediate values).
TEST(FileDigest, isSha256) {
    const TempDir folder;
    writeFile(folder / "abc", "abc");
    const auto digest = digestOfFile(folder / "abc");
    EXPECT_EQ(digest.sha256, "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    EXPECT_EQ(digest.size, 3U);
}

TEST(SystemError, isWhatAPersonCanDoSomethingAbout) {
    EXPECT_EQ(systemError(ENOSPC, "/x").code, ErrorCode::StoreFull);
    EXPECT_EQ(systemError(EDQUOT, "/x").code, ErrorCode::StoreFull);
    EXPECT_EQ(systemError(EROFS, "/x").code, ErrorCode::StoreReadOnly);
    EXPECT_EQ(systemError(EACCES, "/x").code, ErrorCode::StoreReadOnly);
    EXPECT_EQ(systemError(ENOENT, "/x").code, ErrorCode::StoreFolderUnusable);
    EXPECT_EQ(systemError(EIO, "/x").code, ErrorCode::StoreFailed);
}

TEST(PlainFile, saysWhatIsWrong) {
    const TempDir folder;
    const auto missing = guarded([&] { static_cast<void>(digestOfFile(folder / "none")); });
    EXPECT_EQ(errorOf(missing), ErrorCode::StoreFolderUnusable);
    writeFile(folder / "file", "x");
    std::filesystem::permissions(folder.path(),
                                 std::filesystem::perms::owner_read | std::filesystem::perms::owner_exec);
    EXPECT_TRUE(asNobody([&] {
        const auto done = guarded([&] { OutFile(folder / "new").finish(); });
        return !done && done.error().code == ErrorCode::StoreReadOnly;
    }));
    std::filesystem::permissions(folder.path(), std::filesystem::perms::owner_all);
    EXPECT_TRUE(entriesOf(folder / "none").empty());
    EXPECT_EQ(entriesOf(folder.path()), std::vector<std::string>{"file"});
}

}  // namespace
}  // namespace hearth::store
