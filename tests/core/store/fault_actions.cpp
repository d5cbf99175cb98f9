// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/store/fault_actions.h"

#include <gmock/gmock.h>
#include <unistd.h>

namespace hearth::store {
namespace {

using quantity::UnitCode;

template <class Value>
Result<void> withoutValue(const Result<Value>& result) {
    return result ? Result<void>() : Result<void>(tl::unexpected<Error>(result.error()));
}

Result<void> typeOne(Store& store, reg::VisitId visit) {
    const auto file = store.visitFile(visit);
    return file ? store.saveEntry(testEntry(*file, reg::Item::TightEnd, "20.67", UnitCode::Millibar))
                : withoutValue(file);
}

Result<void> moveAway(Store& store, reg::VisitId visit) {
    const auto file = store.visitFile(visit);
    if (!file) {
        return withoutValue(file);
    }
    auto premises = file->premises;
    premises.address.line1 = "9 Ford End";
    return store.save(premises);
}

Result<void> undoOne(Store& store, reg::VisitId /*visit*/) {
    return withoutValue(store.undo());
}

Result<void> visitAgain(Store& store, reg::VisitId visit) {
    const auto file = store.visitFile(visit);
    if (!file) {
        return withoutValue(file);
    }
    auto another = file->visit;
    another.id = {};
    return withoutValue(store.startVisit(another));
}

Result<void> noteOne(Store& store, reg::VisitId visit) {
    const auto records = store.recordsOf(visit);
    return records ? store.noteEvent(records->front().id, "printed", "") : withoutValue(records);
}

Result<void> attachOne(Store& store, reg::VisitId visit) {
    return withoutValue(
        store.attach({"visits", visit.bytes, "flue.jpg", "image/jpeg", std::string(60000, 'p'),
                      std::string(2000, 's'), false, "outside wall"}));
}

Result<void> detachOne(Store& store, reg::VisitId visit) {
    const auto kept = store.attachmentsOf(visit.bytes);
    return kept ? store.detach(kept->front().id) : withoutValue(kept);
}

}  // namespace

std::string stateOf(const std::filesystem::path& path) {
    return askSql(
        path,
        "SELECT (SELECT group_concat(item || '=' || text) FROM entries) || '|' ||"
        "(SELECT group_concat(line1) FROM premises) || '|' ||"
        "(SELECT count(*) FROM search_words) || '|' ||"
        "(SELECT count(*) FROM pipe_sections) || '|' ||"
        "(SELECT count(*) FROM visits) || '|' || (SELECT count(*) FROM tests) || '|' ||"
        "(SELECT count(*) FROM record_headers) || '|' || (SELECT count(*) FROM record_snapshots) || '|' ||"
        "(SELECT count(*) FROM record_pdfs) || '|' || (SELECT sum(last_number) FROM series) || '|' ||"
        "(SELECT count(*) FROM attachments) || '|' || (SELECT count(*) FROM attachment_bytes) || '|' ||"
        "(SELECT count(*) FROM record_events) || '|' || (SELECT count(*) FROM changes)");
}

Result<void> layPipes(Store& store, reg::VisitId visit) {
    const auto file = store.visitFile(visit);
    if (!file) {
        return withoutValue(file);
    }
    std::vector<reg::PipeSection> sections;
    for (int i = 0; i < 20; ++i) {
        sections.push_back({{store.newId()},
                            file->installation.id,
                            std::nullopt,
                            i,
                            "copper_22",
                            {"3", UnitCode::Metre},
                            {},
                            "",
                            true});
    }
    return store.savePipes(file->installation.id, sections);
}

Result<void> issueAnother(Store& store, reg::VisitId visit) {
    const auto file = store.visitFile(visit);
    if (!file) {
        return withoutValue(file);
    }
    IssueRequest request;
    request.snapshot.file = *file;
    return withoutValue(store.issue(
        request, [](const auto&, const auto&) { return Result<std::string>(std::string(60000, 'p')); }));
}

const std::vector<Action>& actions() {
    static const std::vector<Action> kActions{
        {"entry", typeOne},  {"premises", moveAway}, {"undo", undoOne, typeOne},
        {"pipes", layPipes}, {"visit", visitAgain},  {"issue", issueAnother},
        {"event", noteOne},  {"attach", attachOne},  {"detach", detachOne, attachOne},
    };
    return kActions;
}

pid_t inChild(const std::function<int()>& work) {
    const pid_t child = fork();
    if (child == 0) {
        int result = 99;
        try {
            result = work();
        } catch (...) {
            result = 98;
        }
        _exit(result);
    }
    return child;
}

void SpoiltStore::SetUp() {
    StoreTest::SetUp();
    visit = valueOf(store->startVisit(sampleVisit(putSample(*store))));
    valueOf(store->saveEntry(
        testEntry(valueOf(store->visitFile(visit)), reg::Item::TightStart, "20.71", UnitCode::Millibar)));
    static_cast<void>(issueOne(visit));
    store.reset();
    m_bytes = hearth::testing::readFile(path());
}

void SpoiltStore::restore() {
    std::filesystem::remove(path().string() + "-journal");
    hearth::testing::writeFile(path(), m_bytes);
}

std::unique_ptr<Store> SpoiltStore::prepared(const Action& action) {
    restore();
    auto opened = valueOf(Store::open(path(), Access::Write, clock));
    if (action.prepare) {
        valueOf(action.prepare(*opened, visit));
    }
    return opened;
}

void SpoiltStore::expectSound(const std::vector<std::string>& states) const {
    const auto opened = Store::open(path(), Access::Write, clock);
    ASSERT_TRUE(opened) << codeText(opened.error().code);
    EXPECT_TRUE((*opened)->verify());
    EXPECT_EQ(valueOf(Store::inspect(path())).integrity, "ok");
    EXPECT_THAT(states, ::testing::Contains(stateOf(path())));
}

}  // namespace hearth::store
