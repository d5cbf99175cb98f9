// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/store/faults/fault_actions.h"

#include "tests/core/store/kept_fixture.h"

#include <algorithm>

namespace hearth::store {
namespace {

using quantity::UnitCode;

Result<void> typeOne(Store& store, const reg::VisitFile& file) {
    return store.saveEntry(testEntry(file, reg::Item::TightEnd, "20.67", UnitCode::Millibar));
}

Result<void> moveAway(Store& store, const reg::VisitFile& file) {
    auto premises = file.premises;
    premises.address.line1 = "9 Ford End";
    return store.save(premises);
}

Result<void> renameHolder(Store& store, const reg::VisitFile& file) {
    auto party = file.people.front().party;
    party.name = "Zofia Wiśniewska";
    return store.save(party);
}

Result<void> handOver(Store& store, const reg::VisitFile& file) {
    return store.save(reg::Role{{}, file.premises.id, file.people.front().party.id, reg::RoleKind::Landlord});
}

Result<void> visitAgain(Store& store, const reg::VisitFile& file) {
    auto another = file.visit;
    another.id = {};
    return withoutValue(store.startVisit(another));
}

Result<void> closeVisit(Store& store, const reg::VisitFile& file) {
    auto visit = file.visit;
    visit.closed = true;
    return store.save(visit);
}

Result<void> changeMeter(Store& store, const reg::VisitFile& file) {
    auto installation = file.installation;
    installation.meterSerial = "E0000002";
    return store.save(installation);
}

Result<void> noteOne(Store& store, reg::VisitId visit) {
    const auto records = store.recordsOf(visit);
    return records ? store.noteEvent(records->front().id, "printed", "") : withoutValue(records);
}

Result<void> voidOne(Store& store, reg::VisitId visit) {
    const auto records = store.recordsOf(visit);
    return records ? store.voidRecord(records->front().id, "wrong house") : withoutValue(records);
}

Result<void> sendOne(Store& store, reg::VisitId visit) {
    const auto records = store.recordsOf(visit);
    return records ? store.noteSending(records->front().id,
                                       {record::SentBy::Mail, "nell@pike.example", "", "", {}})
                   : withoutValue(records);
}

Result<void> makeKey(Store& store, reg::VisitId /*visit*/) {
    return store.makeSigningKey("quiet lamp under stairs");
}

Result<void> makeKeyAndOpen(Store& store, reg::VisitId visit) {
    if (auto made = makeKey(store, visit); !made) {
        return made;
    }
    const auto key = store.openSigningKey("quiet lamp under stairs");
    if (key) {
        store.signWith(*key);
    }
    return withoutValue(key);
}

Result<void> revise(Store& store, reg::VisitId visit) {
    const auto records = store.recordsOf(visit);
    if (!records) {
        return withoutValue(records);
    }
    auto request = requestFor(store, visit);
    request.supersedes = records->front().id;
    request.reason = "a wrong address";
    return withoutValue(store.issue(request, bigPdf));
}

Result<void> confirmRule(Store& store, reg::VisitId /*visit*/) {
    return store.save(rulebook::FirmEntry{
        {rulebook::Rule::NoMovementElectronic, {}, {}},
        quantity::Figure{valueOf(quantity::Decimal::parse("0.20")), UnitCode::Millibar},
        "Tamsin Ember",
        calendar::Date{std::chrono::year(2026), std::chrono::month(11), std::chrono::day(25)},
        "own copy, table 5"});
}

Result<void> changeEngineer(Store& store, reg::VisitId /*visit*/) {
    const auto engineers = store.engineers();
    if (!engineers) {
        return withoutValue(engineers);
    }
    auto engineer = engineers->front();
    engineer.cardNumber = "0000002";
    return store.save(engineer);
}

Result<void> changeGauge(Store& store, reg::VisitId /*visit*/) {
    const auto gauges = store.instruments();
    if (!gauges) {
        return withoutValue(gauges);
    }
    auto gauge = gauges->front();
    gauge.certificate = "C-2";
    return store.save(gauge);
}

Result<void> renameFirm(Store& store, reg::VisitId /*visit*/) {
    auto firm = store.firm();
    if (!firm) {
        return withoutValue(firm);
    }
    firm->telephone = "01632 960001";
    return store.saveFirm(*firm);
}

Result<void> muchAtOnce(Store& store, reg::VisitId visit) {
    return store.together([&]() -> Result<void> {
        for (const auto& part :
             {std::function<Result<void>()>([&] { return renameFirm(store, visit); }),
              std::function<Result<void>()>([&] { return onFile(moveAway)(store, visit); }),
              std::function<Result<void>()>([&] { return issueAnother(store, visit); }),
              std::function<Result<void>()>([&] { return onFile(typeOne)(store, visit); })}) {
            if (const auto done = part(); !done) {
                return done;
            }
        }
        return {};
    });
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

Result<void> describeOne(Store& store, reg::VisitId visit) {
    const auto kept = store.attachmentsOf(visit.bytes);
    return kept ? store.describeAttachment(kept->front().id, "meter.jpg", "under the stairs")
                : withoutValue(kept);
}

Result<void> showOne(Store& store, reg::VisitId visit) {
    const auto kept = store.attachmentsOf(visit.bytes);
    return kept ? store.showInRecords(kept->front().id, visit) : withoutValue(kept);
}

Result<void> leaveOnlyBytes(Store& store, reg::VisitId visit) {
    const auto attached = attachOne(store, visit);
    return attached ? detachOne(store, visit) : attached;
}

Result<void> knowNell(Store& store, reg::VisitId /*visit*/) {
    reg::Party nell;
    nell.id = {store.newId()};
    nell.name = "Nell Harrow";
    nell.telephone = "01632 960123";
    return store.save(nell);
}

/// Somebody changed what is derived, so that there is something to mend.
Result<void> spoilDue(Store& store, reg::VisitId /*visit*/) {
    const auto said = sqlOn(store.path(), "UPDATE due_premises SET deadline = coalesce(deadline, 0) + 1");
    return said.empty() ? Result<void>() : fail(ErrorCode::StoreFailed, {store.path().string(), said});
}

Result<void> eraseOne(Store& store, reg::VisitId /*visit*/) {
    const auto found = store.parties("nell");
    return found ? withoutValue(store.erase(found->front().id)) : withoutValue(found);
}

Result<void> noteMade(Store& store, reg::VisitId /*visit*/) {
    BackupOutcome outcome;
    outcome.made = "/backups/firm-backup-000000-20261125T094600Z.hearth";
    outcome.mark = "1/2/3/4";
    return store.noteBackup(outcome);
}

// The form of what seals backups: costs, salt, public and signing key.
std::string someSealing() {
    return "1 8192 " + std::string(32, '0') + " " + std::string(64, '0') + " " + std::string(128, '0');
}

Result<void> undoOne(Store& store, reg::VisitId /*visit*/) {
    return withoutValue(store.undo());
}

/// What the sample was, read back.
Result<void> withSample(const std::function<Result<void>(Store&, const Sample&)>& work, Store& store,
                        reg::VisitId visit) {
    const auto file = store.visitFile(visit);
    return file ? work(store, {file->people.front().party, file->premises, file->installation,
                               file->engineers.front(), file->instruments.front()})
                : withoutValue(file);
}

const std::vector<Action>& plainActions() {
    static const std::vector<Action> kActions{
        {"entry", "saveEntry", onFile(typeOne)},
        {"premises", "save reg::Premises", onFile(moveAway)},
        {"party", "save reg::Party", onFile(renameHolder)},
        {"role", "save reg::Role", onFile(handOver)},
        {"no_role", "removeRole", onFile([](Store& store, const reg::VisitFile& file) {
             return store.removeRole(file.premises.id, reg::RoleKind::Customer);
         })},
        {"installation", "save reg::Installation", onFile(changeMeter)},
        {"pipes", "savePipes", layPipes},
        {"pipes_again", "savePipes", layPipes, layPipes},
        {"visit", "startVisit", onFile(visitAgain)},
        {"visit_closed", "save reg::Visit", onFile(closeVisit)},
        {"test", "addTest",
         [](Store& store, reg::VisitId visit) { return withoutValue(store.addTest(visit, "after work")); }},
        {"issue", "issue", issueAnother},
        {"revision", "issue", revise},
        {"event", "noteEvent", noteOne},
        {"void", "voidRecord", voidOne},
        {"sending", "noteSending", sendOne},
        {"key", "makeSigningKey", makeKey},
        {"sign", "signWaiting",
         [](Store& store, reg::VisitId /*visit*/) { return withoutValue(store.signWaiting(9)); },
         makeKeyAndOpen},
        {"rule", "save rulebook::FirmEntry", confirmRule},
        {"engineer", "save reg::Engineer", changeEngineer},
        {"gauge", "save reg::Instrument", changeGauge},
        {"firm", "saveFirm", renameFirm},
        {"attach", "attach", attachOne},
        {"logo", "attachLogo",
         [](Store& store, reg::VisitId /*visit*/) {
             return withoutValue(
                 store.attachLogo({"", {}, "logo.png", "image/png", "bytes of a logo", "", false, ""}));
         }},
        {"detach", "detach", detachOne, attachOne},
        {"describe", "describeAttachment", describeOne, attachOne},
        {"show", "showInRecords", showOne, attachOne},
        {"drop_bytes", "dropUnusedBytes",
         [](Store& store, reg::VisitId /*visit*/) { return withoutValue(store.dropUnusedBytes()); },
         leaveOnlyBytes},
        {"together", "together", muchAtOnce},
        {"erase", "erase", eraseOne, knowNell},
        {"mend_due", "mendDue", [](Store& store, reg::VisitId /*visit*/) { return store.mendDue(); },
         spoilDue},
        {"mend", "mendSearch", [](Store& store, reg::VisitId /*visit*/) { return store.mendSearch(); }},
        {"undo", "undo", undoOne, onFile(typeOne)},
        {"undo_pipes", "undo", undoOne, layPipes},
    };
    return kActions;
}

/// What is done with what is kept beside visits.
void addKept(std::vector<Action>& all) {
    for (const auto& kept : keptActions()) {
        Action action{kept.name, kept.call, [&kept](Store& store, reg::VisitId visit) {
                          return withSample(kept.run, store, visit);
                      }};
        if (kept.prepare) {
            action.prepare = [&kept](Store& store, reg::VisitId visit) {
                return withSample(kept.prepare, store, visit);
            };
        }
        all.push_back(std::move(action));
    }
}

Result<void> writeLetter(Store& store, const reg::VisitFile& file) {
    reg::Letter letter;
    letter.id = {store.newId()};
    letter.premises = file.premises.id;
    letter.party = file.people.front().party.id;
    letter.kind = "reminder";
    letter.text = "Dear Nell Harrow";
    letter.at = file.visit.startedAt;
    return store.save(letter);
}

Result<void> letAllGo(Store& store, reg::VisitId visit) {
    const auto records = store.recordsOf(visit);
    const auto file = store.visitFile(visit);
    const auto letters = file ? store.letters(file->premises.id) : tl::unexpected<Error>(file.error());
    if (!records || !letters) {
        return records ? withoutValue(letters) : withoutValue(records);
    }
    LettingGo what;
    for (const auto& line : *records) {
        what.records.push_back(line.id);
    }
    for (const auto& letter : *letters) {
        what.letters.push_back(letter.id);
    }
    return store.letGo(what);
}

Result<void> holdOne(Store& store, reg::VisitId visit) {
    const auto records = store.recordsOf(visit);
    return records ? store.hold(records->front().id, "a claim") : withoutValue(records);
}

Result<void> liftOne(Store& store, reg::VisitId visit) {
    const auto records = store.recordsOf(visit);
    return records ? store.liftHold(records->front().id) : withoutValue(records);
}

/// Keeping, and its end.
void addKeeping(std::vector<Action>& all) {
    constexpr std::chrono::hours kSevenYears{24 * 366 * 7};
    all.push_back({"let_go", "letGo", letAllGo, onFile(writeLetter), kSevenYears});
    all.push_back({"hold", "hold", holdOne});
    all.push_back({"lift_hold", "liftHold", liftOne, holdOne});
}

/// What the store remembers of its backups.
void addBackups(std::vector<Action>& all) {
    all.push_back({"note_backup", "noteBackup", noteMade});
    all.push_back({"second_folder", "setSecondFolder",
                   [](Store& store, reg::VisitId /*visit*/) { return store.setSecondFolder("/tmp"); }});
    all.push_back({"sealing", "setSealing",
                   [](Store& store, reg::VisitId /*visit*/) { return store.setSealing(someSealing()); }});
}

}  // namespace

std::string bigPdf(const record::Document& /*document*/, const std::string& /*digest*/) {
    return std::string(60000, 'p');
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
        sections.back().fittings = "2 elbows";
        sections.back().capped = true;
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
    return withoutValue(store.issue(request, bigPdf));
}

const std::vector<Action>& actions() {
    static const std::vector<Action> kActions = [] {
        std::vector<Action> all = plainActions();
        all.insert(all.end(), sheetActions().begin(), sheetActions().end());
        addKept(all);
        addBackups(all);
        addKeeping(all);
        return all;
    }();
    return kActions;
}

void SpoiltStore::SetUp() {
    StoreTest::SetUp();
    visit = valueOf(store->startVisit(sampleVisit(putSample(*store))));
    valueOf(store->saveEntry(
        testEntry(valueOf(store->visitFile(visit)), reg::Item::TightStart, "20.71", UnitCode::Millibar)));
    static_cast<void>(issueOne(visit));
    store.reset();
    m_start = clock.now();
    m_bytes = hearth::testing::readFile(path());
}

void SpoiltStore::restore() {
    std::filesystem::remove(path().string() + "-journal");
    hearth::testing::writeFile(path(), m_bytes);
}

std::unique_ptr<Store> SpoiltStore::prepared(const Action& action) {
    restore();
    clock.set(m_start);
    auto opened = valueOf(Store::open(path(), Access::Write, clock));
    if (action.prepare) {
        valueOf(action.prepare(*opened, visit));
    }
    clock.advance(action.later);
    return opened;
}

void SpoiltStore::expectSound(const std::vector<std::string>& states) const {
    {
        const auto opened = Store::open(path(), Access::Write, clock);
        ASSERT_TRUE(opened) << codeText(opened.error().code);
        EXPECT_TRUE((*opened)->verify());
    }
    EXPECT_EQ(problemsOf(path()), "");
    const std::string now = state();
    EXPECT_NE(std::find(states.begin(), states.end(), now), states.end())
        << "neither old nor new; against the old state:\n"
        << firstDifference(states.front(), now) << "\nand against the new one:\n"
        << firstDifference(states.back(), now);
}

}  // namespace hearth::store
