// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/backup_name.h"

#include "core/base/digits.h"
#include "core/record/snapshot.h"

#include <QByteArray>
#include <QSysInfo>

#include <algorithm>
#include <chrono>
#include <set>

namespace hearth::store {
namespace {

constexpr std::string_view kStoreSuffix = ".hearth";
constexpr std::string_view kSealedSuffix = ".sealed";
constexpr std::size_t kTagLength = 6;
constexpr std::string_view kStampForm = "00000000T000000Z";

bool isHexDigit(char c) {
    return isDigit(c) || (c >= 'a' && c <= 'f');
}

/// Takes `end` off the end of `text`; false when it does not end so.
bool dropEnd(std::string_view& text, std::string_view end) {
    if (text.size() < end.size() || text.substr(text.size() - end.size()) != end) {
        return false;
    }
    text.remove_suffix(end.size());
    return true;
}

/// "20261125T094610Z".
std::optional<Instant> instantOfStamp(std::string_view stamp) {
    if (stamp.size() != kStampForm.size()) {
        return std::nullopt;
    }
    for (std::size_t i = 0; i < stamp.size(); ++i) {
        if (kStampForm[i] == '0' ? !isDigit(stamp[i]) : stamp[i] != kStampForm[i]) {
            return std::nullopt;
        }
    }
    const std::string digits(stamp);
    const std::string text = digits.substr(0, 4) + "-" + digits.substr(4, 2) + "-" + digits.substr(6, 2) +
                             "T" + digits.substr(9, 2) + ":" + digits.substr(11, 2) + ":" +
                             digits.substr(13, 2) + ".000Z";
    Instant instant{};
    return parseInstant(text, instant) ? std::optional(instant) : std::nullopt;
}

std::string stampOf(Instant instant) {
    std::string stamp = instantText(instant).substr(0, std::string_view("2026-11-25T09:46:10").size());
    stamp.erase(std::remove_if(stamp.begin(), stamp.end(), [](char c) { return c == '-' || c == ':'; }),
                stamp.end());
    return stamp + "Z";
}

/// Takes the stamp, and the count of a second that has several, off the end.
bool takeStamp(std::string_view& text, BackupName& name) {
    std::size_t digits = 0;
    while (digits < 3 && digits < text.size() && isDigit(text[text.size() - 1 - digits])) {
        ++digits;
    }
    if (digits > 0) {
        name.count = std::stoi(std::string(text.substr(text.size() - digits)));
        text.remove_suffix(digits);
        if (name.count < 2 || !dropEnd(text, "-")) {
            return false;
        }
    }
    if (text.size() < kStampForm.size()) {
        return false;
    }
    const auto at = instantOfStamp(text.substr(text.size() - kStampForm.size()));
    if (!at) {
        return false;
    }
    name.madeAt = *at;
    text.remove_suffix(kStampForm.size());
    return dropEnd(text, "-");
}

/// "backup-3f9a1c", "before-restore", "damaged", "schema1" at the end.
bool takeKind(std::string_view& text, BackupName& name) {
    if (dropEnd(text, "-before-restore")) {
        name.kind = BackupKind::BeforeRestore;
        return true;
    }
    if (dropEnd(text, "-damaged")) {
        name.kind = BackupKind::SetAside;
        return true;
    }
    const auto dash = text.rfind('-');
    if (dash == std::string_view::npos) {
        return false;
    }
    const std::string_view last = text.substr(dash + 1);
    constexpr std::string_view kSchema = "schema";
    if (last.size() > kSchema.size() && last.substr(0, kSchema.size()) == kSchema) {
        name.kind = BackupKind::BeforeMigration;
        text.remove_suffix(last.size() + 1);
        return std::all_of(last.begin() + kSchema.size(), last.end(), isDigit);
    }
    if (last.size() != kTagLength || !std::all_of(last.begin(), last.end(), isHexDigit)) {
        return false;
    }
    name.tag = last;
    text.remove_suffix(last.size() + 1);
    return dropEnd(text, "-backup");
}

using Days = std::chrono::sys_days;

/// What of an instant makes two of them the same day, week, month: numbers that grow with time.
int dayNumber(Instant at) {
    return static_cast<int>(std::chrono::floor<std::chrono::days>(at).time_since_epoch().count());
}
int weekNumber(Instant at) {
    constexpr int kThursday = 3;  // 1 January 1970 was one; a week begins on Monday
    constexpr int kDaysOfWeek = 7;
    const int days = dayNumber(at) + kThursday;
    return days >= 0 ? days / kDaysOfWeek : (days - (kDaysOfWeek - 1)) / kDaysOfWeek;
}
int monthNumber(Instant at) {
    const std::chrono::year_month_day date{Days(std::chrono::floor<std::chrono::days>(at))};
    constexpr int kMonths = 12;
    return static_cast<int>(date.year()) * kMonths + static_cast<int>(static_cast<unsigned>(date.month()));
}

struct Dated {
    Instant at;
    int count;
    std::string name;
};

/// Keeps the first of each of the first `most` periods; `newestFirst` is what it says.
void keepOnePer(int (*periodOf)(Instant), int most, const std::vector<Dated>& newestFirst,
                std::set<std::string>& kept) {
    std::set<int> periods;
    for (const auto& one : newestFirst) {
        const int period = periodOf(one.at);
        if (periods.count(period) == 0 && static_cast<int>(periods.size()) < most) {
            periods.insert(period);
            kept.insert(one.name);
        }
    }
}

}  // namespace

std::optional<BackupName> parseBackupName(std::string_view name) {
    BackupName parsed;
    parsed.isSealed = dropEnd(name, kSealedSuffix);
    if (!dropEnd(name, kStoreSuffix) || !takeStamp(name, parsed) || !takeKind(name, parsed) || name.empty()) {
        return std::nullopt;
    }
    if (parsed.isSealed && parsed.kind != BackupKind::Regular) {
        return std::nullopt;
    }
    parsed.stem = name;
    return parsed;
}

std::string textOf(const BackupName& name) {
    std::string text = name.stem;
    switch (name.kind) {
        case BackupKind::Regular:
            text += "-backup-" + name.tag;
            break;
        case BackupKind::BeforeRestore:
            text += "-before-restore";
            break;
        case BackupKind::SetAside:
            text += "-damaged";
            break;
        case BackupKind::BeforeMigration:
            text += "-schema";
            break;
    }
    text += "-" + stampOf(name.madeAt);
    if (name.count > 1) {
        text += "-" + std::to_string(name.count);
    }
    text += kStoreSuffix;
    return name.isSealed ? text + std::string(kSealedSuffix) : text;
}

std::string backupTagOf(const std::filesystem::path& store) {
    std::error_code unknown;
    const auto whole = std::filesystem::weakly_canonical(store, unknown);
    const std::string machine = QSysInfo::machineUniqueId().toStdString();
    return record::sha256(machine + "|" + (unknown ? store : whole).string()).substr(0, kTagLength);
}

std::vector<std::string> backupsToLetGo(const std::vector<std::string>& names, std::string_view stem,
                                        std::string_view tag, std::string_view justMade, Instant now) {
    std::vector<Dated> mine;
    for (const auto& name : names) {
        const auto parsed = parseBackupName(name);
        if (parsed && parsed->kind == BackupKind::Regular && parsed->stem == stem && parsed->tag == tag &&
            parsed->madeAt <= now) {
            mine.push_back({parsed->madeAt, parsed->count, name});
        }
    }
    std::sort(mine.begin(), mine.end(), [](const Dated& one, const Dated& other) {
        return std::tie(other.at, other.count, other.name) < std::tie(one.at, one.count, one.name);
    });
    std::set<std::string> kept{std::string(justMade)};
    keepOnePer(dayNumber, kDailyBackups, mine, kept);
    keepOnePer(weekNumber, kWeeklyBackups, mine, kept);
    keepOnePer(monthNumber, kMonthlyBackups, mine, kept);
    std::vector<std::string> gone;
    for (const auto& one : mine) {
        if (kept.count(one.name) == 0) {
            gone.push_back(one.name);
        }
    }
    return gone;
}

}  // namespace hearth::store
