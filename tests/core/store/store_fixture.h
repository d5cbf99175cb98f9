// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/store.h"
#include "tests/support/files.h"
#include "tests/support/fixed_clock.h"

#include <gtest/gtest.h>
#include <memory>
#include <string>

namespace hearth::store {

/// Gives the value, or fails the test with the error's code and particulars.
template <class Value>
Value valueOf(Result<Value> result) {
    if (!result) {
        std::string text(codeText(result.error().code));
        for (const auto& detail : result.error().details) {
            text += " | " + detail;
        }
        throw std::runtime_error(text);
    }
    if constexpr (!std::is_void_v<Value>) {
        return std::move(*result);
    }
}

/// The code of an error; fails the test when there was none.
template <class Value>
ErrorCode errorOf(const Result<Value>& result) {
    if (result) {
        throw std::runtime_error("no error");
    }
    return result.error().code;
}

/// One customer with one premises, its installation, an engineer and a gauge. All invented.
struct Sample {
    reg::Party customer;
    reg::Premises premises;
    reg::Installation installation;
    reg::Engineer engineer;
    reg::Instrument gauge;
};
[[nodiscard]] reg::Firm sampleFirm();
[[nodiscard]] Sample putSample(Store& store);
[[nodiscard]] reg::Visit sampleVisit(const Sample& sample);
[[nodiscard]] reg::Entry testEntry(const reg::VisitFile& file, reg::Item item, const std::string& text,
                                   quantity::UnitCode unit = quantity::UnitCode::None);

/// A document with one paragraph, for a visit as it stands.
[[nodiscard]] IssueRequest requestFor(const Store& store, reg::VisitId visit);
/// Refuses, as the paper does for a letter that no font of ours has.
[[nodiscard]] Result<std::string> renderRefused(const record::Document& document, const std::string& digest);
/// Bytes that stand for a PDF: they name number, revision and digest as a page does.
[[nodiscard]] std::string pdfOf(const record::Document& document, const std::string& digest);

/// The number of a series' letters, the chain's number: "BCD-000001" of whatever series.
[[nodiscard]] std::string withoutSeries(const std::string& record);

/// A fresh store in a folder of its own.
class StoreTest : public ::testing::Test {
  protected:
    [[nodiscard]] std::filesystem::path path() const { return m_folder / "firm.hearth"; }
    [[nodiscard]] std::filesystem::path inFolder(std::string_view name) const { return m_folder / name; }
    void SetUp() override { store = valueOf(Store::create(path(), sampleFirm(), clock)); }
    /// Closes the store and opens it again, as a program that is started tomorrow.
    void reopen(Access access = Access::Write) {
        store.reset();
        store = valueOf(Store::open(path(), access, clock));
    }
    [[nodiscard]] RecordId issueOne(reg::VisitId visit) {
        return valueOf(store->issue(requestFor(*store, visit), pdfOf));
    }

  private:
    hearth::testing::TempDir m_folder;  // before the store, which is closed before its folder goes

  protected:
    FixedClock clock = hearth::testing::fixedClock("2026-11-25", "09:46");
    std::unique_ptr<Store> store;
};

/// Runs SQL on a file as somebody with another program would: no triggers of ours are off, but nothing of our
/// connection's set-up is on. Gives SQLite's message, empty when it worked.
[[nodiscard]] std::string sqlOn(const std::filesystem::path& path, const std::string& sql);
/// The first column of the first row.
[[nodiscard]] std::string askSql(const std::filesystem::path& path, const std::string& sql);

/// Bytes with one bit of one of them turned over.
[[nodiscard]] std::string withFlippedBit(std::string bytes, std::size_t place, unsigned bit);

/// How much of a long-running check to do: `usual`, or `full` with HEARTH_FULL=1 in the environment.
[[nodiscard]] int rounds(int usual, int full);

/// Everything is some times slower: what is tried by lot is tried less often there, since the run without
/// sanitizers tries the same.
#ifdef __SANITIZE_ADDRESS__
inline constexpr bool kIsSanitized = true;
#else
inline constexpr bool kIsSanitized = false;
#endif

}  // namespace hearth::store
