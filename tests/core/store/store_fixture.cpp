// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/store/store_fixture.h"

#include <cstdlib>
#include <sqlite3.h>

namespace hearth::store {
namespace {

/// A connection that nobody of ours has set up.
class Raw {
  public:
    explicit Raw(const std::filesystem::path& path) {
        if (sqlite3_open_v2(path.c_str(), &m_db, SQLITE_OPEN_READWRITE, nullptr) != SQLITE_OK) {
            throw std::runtime_error("cannot open " + path.string());
        }
    }
    ~Raw() { sqlite3_close(m_db); }
    Raw(const Raw&) = delete;
    Raw& operator=(const Raw&) = delete;

    std::string run(const std::string& sql, sqlite3_callback callback = nullptr, void* data = nullptr) {
        char* message = nullptr;
        sqlite3_exec(m_db, sql.c_str(), callback, data, &message);
        std::string text = message != nullptr ? message : "";
        sqlite3_free(message);
        return text;
    }

  private:
    sqlite3* m_db = nullptr;
};

int keepFirst(void* data, int count, char** values, char** /*names*/) {
    auto* text = static_cast<std::string*>(data);
    if (text->empty() && count > 0 && values[0] != nullptr) {
        *text = values[0];
    }
    return 0;
}

}  // namespace

std::string sqlOn(const std::filesystem::path& path, const std::string& sql) {
    return Raw(path).run(sql);
}

std::string askSql(const std::filesystem::path& path, const std::string& sql) {
    std::string answer;
    const std::string problem = Raw(path).run(sql, keepFirst, &answer);
    if (!problem.empty()) {
        throw std::runtime_error(problem);
    }
    return answer;
}

std::string withFlippedBit(std::string bytes, std::size_t place, unsigned bit) {
    constexpr unsigned kBits = 8;
    const auto byte = static_cast<unsigned char>(bytes.at(place));
    bytes.at(place) = static_cast<char>(byte ^ (1U << (bit % kBits)));
    return bytes;
}

int rounds(int usual, int full) {
    const char* wanted = std::getenv("HEARTH_FULL");
    return wanted != nullptr && std::string_view(wanted) == "1" ? full : usual;
}

reg::Firm sampleFirm() {
    reg::Firm firm;
    firm.name = "Ember & Sons";
    firm.address = {"1 Kiln Lane", "", "Ashwick", "QA1 1AA"};
    firm.registrationNumber = "000000";
    firm.telephone = "01632 960000";
    firm.email = "office@ember.example";
    return firm;
}

Sample putSample(Store& store) {
    Sample sample;
    sample.customer.id = reg::PartyId{store.newId()};
    sample.customer.name = "Llŷr O'Brien";
    sample.premises.id = reg::PremisesId{store.newId()};
    sample.premises.address = {"12 Highcroft Rise", "Flat 3", "Ashwick", "QA2 3BC"};
    sample.premises.country = reg::Country::Wales;
    sample.premises.accessNotes = "key with the neighbour";
    sample.installation.id = reg::InstallationId{store.newId()};
    sample.installation.premises = sample.premises.id;
    sample.installation.meterCode = "u6_g4";
    sample.installation.operatingPressure = {"21", quantity::UnitCode::Millibar};
    sample.engineer.id = reg::EngineerId{store.newId()};
    sample.engineer.name = "Tamsin Ember";
    sample.engineer.cardNumber = "0000001";
    sample.gauge.id = reg::InstrumentId{store.newId()};
    sample.gauge.name = "gauge no. 2";
    sample.gauge.resolution = {"0.01", quantity::UnitCode::Millibar};
    valueOf(store.save(sample.customer));
    valueOf(store.save(sample.premises));
    valueOf(store.save(reg::Role{{}, sample.premises.id, sample.customer.id, reg::RoleKind::Customer}));
    valueOf(store.save(sample.installation));
    valueOf(store.save(sample.engineer));
    valueOf(store.save(sample.gauge));
    return sample;
}

reg::Visit sampleVisit(const Sample& sample) {
    reg::Visit visit;
    visit.premises = sample.premises.id;
    visit.installation = sample.installation.id;
    visit.date = calendar::Date{std::chrono::year(2026), std::chrono::month(11), std::chrono::day(25)};
    visit.engineer = sample.engineer.id;
    return visit;
}

reg::Entry testEntry(const reg::VisitFile& file, reg::Item item, const std::string& text,
                     quantity::UnitCode unit) {
    reg::Entry entry;
    entry.visit = file.visit.id;
    entry.subject = reg::subject(file.tests.front().id);
    entry.item = item;
    entry.text = text;
    entry.unit = unit;
    return entry;
}

IssueRequest requestFor(const Store& store, reg::VisitId visit) {
    IssueRequest request;
    request.snapshot.file = valueOf(store.visitFile(visit));
    request.snapshot.document.title = "Gas tightness and purge record";
    request.snapshot.document.blocks = {
        record::Paragraph{"Remarks", "No movement: 20.71 to 20.67 mbar.", false}};
    request.outcome = rulebook::Outcome::Pass;
    return request;
}

std::string withoutSeries(const std::string& record) {
    return record.substr(record.find('-'));
}

Result<std::string> renderRefused(const record::Document& /*document*/, const std::string& /*digest*/) {
    return fail(ErrorCode::LetterMissingInFont, {"ŷ"});
}

std::string pdfOf(const record::Document& document, const std::string& digest) {
    return "%PDF " + document.number + " " + std::to_string(document.revision) + " " + digest +
           std::string(1, '\0');
}

}  // namespace hearth::store
