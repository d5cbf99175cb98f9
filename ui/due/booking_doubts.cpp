// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/due/booking_doubts.h"

#include "core/judging/competence.h"
#include "ui/due/due_text.h"

#include <algorithm>

namespace hearth::ui::due {

using words::qstring;

namespace {

/// What is judged of one installation of the premises, as if the booked visit were open.
struct BookedWork {
    reg::VisitFile file;
    std::vector<reg::Competence> held;
};

QString applianceText(const reg::VisitFile& file, const reg::SubjectRef& on, const words::Words& words) {
    const auto found = std::find_if(file.appliances.begin(), file.appliances.end(),
                                    [&](const reg::Appliance& one) { return reg::subject(one.id) == on; });
    if (found == file.appliances.end()) {
        return {};
    }
    QStringList parts;
    if (!found->kind.empty()) {
        parts << words.choice(reg::Item::ApplianceKind, found->kind);
    }
    if (!found->place.empty()) {
        parts << qstring(found->place);
    }
    return parts.join(QStringLiteral(", "));
}

/// The same sentence of several installations or premises is said once.
void put(std::vector<shell::Line>& lines, shell::Line line) {
    const auto isSaid = [&](const shell::Line& one) { return one.title == line.title; };
    if (std::none_of(lines.begin(), lines.end(), isSaid)) {
        line.key = QString::number(lines.size());
        lines.push_back(std::move(line));
    }
}

Result<std::vector<BookedWork>> worksOf(const store::Store& store, const reg::Booking& booking) {
    const auto engineers = store.engineers();
    const auto held = store.competences(*booking.engineer);
    const auto installations = store.installations(booking.premises);
    if (!engineers || !held || !installations) {
        return tl::unexpected(!engineers ? engineers.error() : !held ? held.error() : installations.error());
    }
    std::vector<BookedWork> works;
    for (const auto& installation : *installations) {
        auto appliances = store.appliances(installation.id);
        if (!appliances) {
            return tl::unexpected(appliances.error());
        }
        BookedWork work{{}, *held};
        work.file.engineers = *engineers;
        work.file.visit.engineer = *booking.engineer;
        work.file.visit.date = booking.date;
        work.file.installation = installation;
        work.file.appliances = std::move(*appliances);
        works.push_back(std::move(work));
    }
    return works;
}

}  // namespace

Result<std::vector<shell::Line>> bookingDoubts(const store::Store& store, const words::Words& words,
                                               const std::vector<reg::Booking>& bookings,
                                               calendar::Date today) {
    std::vector<shell::Line> lines;
    for (const auto& booking : bookings) {
        if (!booking.engineer) {
            continue;
        }
        const auto works = worksOf(store, booking);
        if (!works) {
            return tl::unexpected(works.error());
        }
        for (const auto& work : *works) {
            for (const auto& judged : judging::judgeBooked(work.file, work.held, today)) {
                const QString of = applianceText(work.file, judged.subject, words);
                const QString sentence = words.sentence(judged.finding.why);
                put(lines, {{},
                            of.isEmpty() ? sentence : of + QStringLiteral(": ") + sentence,
                            {},
                            {},
                            {},
                            judged.finding.outcome});
            }
        }
    }
    // What keeps the engineer from the work comes first.
    std::stable_sort(lines.begin(), lines.end(), [](const shell::Line& left, const shell::Line& right) {
        const auto isFail = [](const shell::Line& line) { return line.outcome == rulebook::Outcome::Fail; };
        return isFail(left) && !isFail(right);
    });
    return lines;
}

}  // namespace hearth::ui::due
