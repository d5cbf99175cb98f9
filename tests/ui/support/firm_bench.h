// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/judging/judge.h"
#include "core/store/store.h"
#include "tests/support/files.h"
#include "tests/support/fixed_clock.h"
#include "tests/ui/support/answers.h"
#include "ui/paper/paper.h"
#include "ui/shell/main_window.h"
#include "ui/shell/place.h"
#include "ui/words/document_words.h"
#include "ui/words/words.h"

#include <QString>

#include <gtest/gtest.h>
#include <memory>
#include <stdexcept>
#include <string>

namespace hearth::testing {

/// The value of a result, or a failed test.
template <class T>
T need(Result<T> result) {
    if (!result) {
        throw std::runtime_error("refused: " + std::string(codeText(result.error().code)));
    }
    if constexpr (!std::is_void_v<T>) {
        return std::move(*result);
    }
}

/// A real store of a small invented firm in a folder of its own, on a fixed day, and everything that a place
/// asks for.
class FirmBench {
  public:
    explicit FirmBench(const std::string& day = "2026-11-25", bool demonstration = false)
        : clock(fixedClock(day)), words(QStringLiteral("en")) {
        firm.name = "Ashdown & Pike Heating";
        firm.address = {"3 Kiln Yard", "", "Thornmere", "TH1 4AB"};
        firm.registrationNumber = "000000";
        firm.demonstration = demonstration;
        store = need(store::Store::create(path(), firm, clock));
        engineer.id = {store->newId()};
        engineer.name = "R. Ashdown";
        engineer.cardNumber = "0000001";
        need(store->save(engineer));
        gauge.id = {store->newId()};
        gauge.name = "gauge no. 1";
        gauge.serial = "EG-100";
        gauge.resolution = {"0.01", quantity::UnitCode::Millibar};
        gauge.accuracy = {"0.1", quantity::UnitCode::Millibar};
        gauge.calibrationDue = calendar::addMonths(clock.today("Europe/London"), 6);
        need(store->save(gauge));
        store->actAs(engineer.name);
    }

    [[nodiscard]] std::filesystem::path path() const { return m_folder / "firm.hearth"; }
    [[nodiscard]] std::filesystem::path folder() const { return m_folder.path(); }

    /// Card and categories of an engineer of whom nothing is to be doubted.
    void makeCompetent() {
        engineer.cardExpires = calendar::addMonths(clock.today("Europe/London"), 12);
        need(store->save(engineer));
        for (const char* category : {"CCN1", "CENWAT", "HTR1", "CKR1", "CMDDA1", "TPCP1"}) {
            reg::Competence held;
            held.id = {store->newId()};
            held.engineer = engineer.id;
            held.category = category;
            held.expires = calendar::addMonths(clock.today("Europe/London"), 36);
            need(store->save(held));
        }
    }

    /// Premises with one natural gas installation and a customer.
    reg::PremisesId addPremises(const std::string& line1, const std::string& customer = {}) {
        reg::Premises premises;
        premises.id = {store->newId()};
        premises.address = {line1, "", "Thornmere", "TH2 9XY"};
        need(store->save(premises));
        reg::Installation installation;
        installation.id = {store->newId()};
        installation.premises = premises.id;
        installation.meterCode = "u6_g4";
        need(store->save(installation));
        if (!customer.empty()) {
            reg::Party party;
            party.id = {store->newId()};
            party.name = customer;
            need(store->save(party));
            need(store->save(reg::Role{{store->newId()}, premises.id, party.id, reg::RoleKind::Customer}));
        }
        return premises.id;
    }

    reg::VisitId startVisit(reg::PremisesId premises) {
        reg::Visit visit;
        visit.id = {store->newId()};
        visit.premises = premises;
        visit.installation = need(store->installations(premises)).front().id;
        visit.date = clock.today("Europe/London");
        visit.engineer = engineer.id;
        visit.startedAt = clock.now();
        return need(store->startVisit(visit));
    }

    /// Issues the visit as it stands, complete or not: what a place does with records is tested here, not
    /// what one needs.
    [[nodiscard]] ui::shell::Issue issue() {
        return ui::shell::Issue([this](reg::VisitId visit, std::optional<store::RecordId> supersedes,
                                       const QString& reason, std::optional<record::RecordKind> kind,
                                       const QString& language) -> Result<store::RecordId> {
            const auto file = store->visitFile(visit);
            const auto book = store->ruleBook();
            if (!file || !book) {
                return tl::unexpected<Error>(file ? book.error() : file.error());
            }
            const auto findings = judging::judge(*file, *book);
            const auto volume = judging::volumeOf(*file, *book);
            store::IssueRequest request;
            request.kind = kind.value_or(request.kind);
            const ui::words::DocumentInput input{request.kind, *file, findings, volume,
                                                 clock.today("Europe/London")};
            request.snapshot.document = language.isEmpty() ? ui::words::documentFor(input, words)
                                                           : ui::words::documentFor(input, language);
            request.snapshot.file = *file;
            request.snapshot.findings = findings;
            request.outcome = record::outcomeOf(request.kind, *file, findings);
            request.supersedes = supersedes;
            request.reason = reason.toStdString();
            return store->issue(
                request,
                [](const record::Document& document, const std::string& digest) -> Result<std::string> {
                    ui::paper::PageOptions options;
                    options.digest = digest;
                    const auto pdf = ui::paper::toPdf(document, options);
                    if (!pdf) {
                        return tl::unexpected<Error>(pdf.error());
                    }
                    return pdf->toStdString();
                });
        });
    }

    [[nodiscard]] ui::shell::Context context() {
        ui::shell::Context made{*store,    clock,    words,   dialogs,
                                navigator, printing, issue(), ui::look::Scheme::Light};
        made.mail = mail();
        return made;
    }

    [[nodiscard]] ui::shell::Parts parts() {
        ui::shell::Parts made{*store, clock, words, dialogs, printing, issue(), ui::look::Scheme::Light,
                              nullptr};
        made.mail = mail();
        return made;
    }

    /// Notes a mail in place of opening a mail program; or fails as one does.
    [[nodiscard]] ui::shell::BeginMail mail() {
        return [this](const ui::shell::Mail& one) -> Result<void> {
            if (mailFailure) {
                return tl::unexpected<Error>(*mailFailure);
            }
            mails.push_back(one);
            return {};
        };
    }

    /// What the store holds, as text, for "nothing was changed".
    [[nodiscard]] std::string state() const {
        std::string text;
        for (const auto& line : need(store->premises(""))) {
            text += line.premises.id.text() + line.premises.address.line1 + line.premises.address.postcode +
                    line.customer + '\n';
            for (const auto& change : need(store->changes("premises", line.premises.id.text()))) {
                text += change.field + change.after.value_or("-") + '\n';
            }
        }
        text += std::to_string(need(store->visits("")).size()) + ' ' +
                std::to_string(need(store->records("")).size()) + ' ' +
                std::to_string(need(store->engineers()).size()) + ' ' +
                std::to_string(need(store->instruments()).size()) + ' ' +
                std::to_string(need(store->parties("")).size()) + need(store->firm()).name;
        return text;
    }

  private:
    TempDir m_folder;

  public:
    FixedClock clock;
    ui::words::Words words;
    reg::Firm firm;
    reg::Engineer engineer;
    reg::Instrument gauge;
    std::unique_ptr<store::Store> store;
    ScriptedDialogs dialogs;
    NotedNavigator navigator;
    NotedPrinting printing;
    std::vector<ui::shell::Mail> mails;
    std::optional<Error> mailFailure;
};

}  // namespace hearth::testing
