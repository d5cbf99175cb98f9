// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gauge/journal.h"

#include "core/record/trace_text.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>

#include <algorithm>

namespace hearth::ui::gauge {

namespace {

using quantity::Decimal;
using quantity::Duration;
using quantity::kSecond;
using std::chrono::milliseconds;

constexpr const char* kJournalHead = "hearthledger gauge journal 1";
constexpr const char* kJournalEnding = ".gauge";
constexpr qint64 kLargestJournal = 64LL * 1024 * 1024;  // a full recording has a sixth of it
constexpr double kMillisecond = 0.001;

QString lockOf(const QString& path) {
    return path + QStringLiteral(".lock");
}

std::string beganText(const TraceOrigin& origin) {
    return origin.beganAt ? instantText(*origin.beganAt) : "unknown";
}

/// One line, whatever somebody called his gauge.
QByteArray oneLine(const std::string& text) {
    return QString::fromStdString(text).simplified().toUtf8();
}

QByteArray textOf(std::string_view text) {
    return {text.data(), static_cast<qsizetype>(text.size())};
}

struct UnitValue {
    Decimal value;
    quantity::UnitCode unit;
};

std::optional<UnitValue> unitValue(const QList<QByteArray>& words, qsizetype at) {
    if (words.size() < at + 2) {
        return std::nullopt;
    }
    const auto value = Decimal::parse(words[at].toStdString());
    const auto unit = quantity::unitFromText(words[at + 1].toStdString());
    return value && unit ? std::optional(UnitValue{*value, *unit}) : std::nullopt;
}

std::optional<milliseconds> timeOf(const QList<QByteArray>& words) {
    bool isNumber = false;
    const qint64 at = words.size() < 2 ? -1 : words[1].toLongLong(&isNumber);
    return isNumber && at >= 0 ? std::optional(milliseconds(at)) : std::nullopt;
}

Duration durationOf(milliseconds at) {
    return {static_cast<double>(at.count()) * kMillisecond, kSecond};
}

class JournalReader {
  public:
    void line(const QByteArray& line) {
        const auto words = line.split(' ');
        const auto& what = words.front();
        if (what == "name") {
            m_read.taken.origin.name = line.mid(5).toStdString();
        } else if (what == "kind" && words.size() > 1) {
            // A kind that nobody knows is taken for practice: it must not become evidence by mistake.
            m_read.taken.origin.kind =
                sourceKindFromCode(words[1].toStdString()).value_or(SourceKind::Simulator);
        } else if (what == "began" && words.size() > 1) {
            Instant began{};
            if (parseInstant(words[1].toStdString(), began)) {
                m_read.taken.origin.beganAt = began;
            }
        } else if (what == "unit" && words.size() > 1) {
            m_read.taken.origin.unit =
                quantity::unitFromText(words[1].toStdString()).value_or(quantity::UnitCode::Millibar);
        } else if (what == "resolution" && words.size() > 2) {
            m_read.taken.origin.resolution = {
                words[1].toStdString(),
                quantity::unitFromText(words[2].toStdString()).value_or(quantity::UnitCode::Millibar)};
        } else if (what == "end") {
            m_read.isEnded = true;
        } else if (what == "beside") {
            m_read.beside = QString::fromUtf8(line.mid(7));
        } else if (what == "z") {
            takeZero(words);
        } else if (const auto at = timeOf(words); at && *at >= m_last) {
            happened(words, *at);
        }
    }

    [[nodiscard]] std::optional<JournalRead> result() {
        return m_read.taken.isEmpty() ? std::nullopt : std::optional(std::move(m_read));
    }

  private:
    void happened(const QList<QByteArray>& words, milliseconds at) {
        if (words.front() == "g") {
            m_lostAt = m_lostAt.value_or(at);
        } else if (words.front() == "e" && words.size() > 2) {
            if (const auto event = gaugeEventFromCode(words[2].toStdString())) {
                m_read.taken.marks.push_back({*event, at});
            }
        } else if (words.front() == "p" && words.size() > 2) {
            m_place = record::coPlaceFromCode(words[2].toStdString()).value_or(m_place);
        } else if (words.front() != "r" || !wasRead(words, at)) {
            return;
        }
        m_last = at;
    }

    bool wasRead(const QList<QByteArray>& words, milliseconds at) {
        auto& taken = m_read.taken;
        const auto reading = unitValue(words, 2);
        const bool isAir = taken.origin.unit == quantity::UnitCode::Ppm;
        const auto pressure = reading && !isAir ? pressureOf(reading->value, reading->unit) : std::nullopt;
        const auto level = reading && isAir ? coOf(reading->value, reading->unit) : std::nullopt;
        if (pressure) {
            tightness::TracePoint point{durationOf(at), *pressure};
            if (const auto second = unitValue(words, 4)) {
                takeSecond(point, *second);
            }
            taken.trace.push_back(point);
        } else if (level) {
            taken.air.push_back({durationOf(at), *level, m_place});
            taken.decimals = std::max(taken.decimals, reading->value.decimals());
        } else {
            return false;
        }
        if (m_lostAt) {
            taken.gaps.push_back({durationOf(*m_lostAt), durationOf(at)});
            m_lostAt.reset();
        }
        return true;
    }

    void takeZero(const QList<QByteArray>& words) {
        const auto reads = unitValue(words, 1);
        const auto step = unitValue(words, 3);
        Instant at{};
        if (!reads || !step || words.size() < 7 || !parseInstant(words[5].toStdString(), at)) {
            return;
        }
        m_read.taken.origin.zero = {{words[1].toStdString(), reads->unit},
                                    {words[3].toStdString(), step->unit},
                                    at,
                                    words[6] == "yes"};
    }

    static void takeSecond(tightness::TracePoint& point, const UnitValue& second) {
        const double value = second.value.toDouble();
        if (pressureOf(second.value, second.unit)) {
            point.barometer = quantity::AbsolutePressure(value, quantity::pressureUnit(second.unit));
        } else if (second.unit == quantity::UnitCode::Celsius || second.unit == quantity::UnitCode::Kelvin) {
            point.temperature = quantity::Temperature(value, quantity::temperatureUnit(second.unit));
        }
    }

    JournalRead m_read;
    air::CoPlace m_place = air::CoPlace::Room;
    milliseconds m_last{0};
    std::optional<milliseconds> m_lostAt;
};

}  // namespace

std::unique_ptr<Journal> Journal::begin(const QString& folder, const TraceOrigin& origin,
                                        const QString& beside, Syncing::Sync sync) {
    const QDir dir(folder);
    if (!dir.mkpath(QStringLiteral("."))) {
        return nullptr;
    }
    // Two recordings may begin in one millisecond: two gauges.
    static int number = 0;
    const QString name = QStringLiteral("%1-%2-%3%4")
                             .arg(QString::fromStdString(beganText(origin)).remove(u':'))
                             .arg(QCoreApplication::applicationPid())
                             .arg(++number)
                             .arg(QLatin1String(kJournalEnding));
    std::unique_ptr<Journal> journal(new Journal(dir.filePath(name)));
    if (!journal->m_lock.tryLock(0) || !journal->m_file.open(QIODevice::WriteOnly | QIODevice::NewOnly)) {
        return nullptr;
    }
    journal->m_syncing = std::make_unique<Syncing>(journal->m_file.handle(), folder, std::move(sync));
    auto& head = journal->m_pending;
    head = QByteArray(kJournalHead) + "\nname " + oneLine(origin.name) + "\nkind " +
           textOf(codeOf(origin.kind)) + "\nbegan " + QByteArray::fromStdString(beganText(origin)) +
           "\nunit " + textOf(quantity::unitText(origin.unit)) + "\n";
    if (!origin.resolution.text.empty()) {
        head += "resolution " + oneLine(origin.resolution.text) + " " +
                textOf(quantity::unitText(origin.resolution.unit)) + "\n";
    }
    if (!beside.isEmpty()) {
        head += "beside " + beside.toUtf8() + "\n";
    }
    if (origin.zero.isThere()) {
        journal->zero(origin.zero);
    }
    return journal->flush() ? std::move(journal) : nullptr;
}

Journal::Journal(const QString& path) : m_file(path), m_lock(lockOf(path)) {
    m_lock.setStaleLockTime(0);  // a recording may go on for hours; that its process lives is what counts
}

Journal::~Journal() {
    flush();
}

void Journal::reading(milliseconds at, const exchange::LineReading& line) {
    m_pending += "r " + QByteArray::number(qint64{at.count()}) + " " +
                 QByteArray::fromStdString(line.value.text()) + " " + textOf(quantity::unitText(line.unit));
    if (line.second) {
        m_pending += " " + QByteArray::fromStdString(line.second->text()) + " " +
                     textOf(quantity::unitText(line.secondUnit));
    }
    m_pending += "\n";
}

void Journal::gap(milliseconds at) {
    m_pending += "g " + QByteArray::number(qint64{at.count()}) + "\n";
}

void Journal::mark(const GaugeMark& mark) {
    m_pending += "e " + QByteArray::number(qint64{mark.at.count()}) + " " + textOf(codeOf(mark.event)) + "\n";
}

void Journal::place(milliseconds at, air::CoPlace place) {
    m_pending += "p " + QByteArray::number(qint64{at.count()}) + " " + textOf(record::codeOf(place)) + "\n";
}

void Journal::zero(const reg::TraceZero& zero) {
    const auto figure = [](const quantity::Typed& typed) {
        return oneLine(typed.text) + " " + textOf(quantity::unitText(typed.unit));
    };
    m_pending += "z " + figure(zero.reads) + " " + figure(zero.step) + " " +
                 QByteArray::fromStdString(instantText(zero.at.value_or(Instant{}))) +
                 (zero.isZero ? " yes\n" : " no\n");
}

void Journal::end() {
    m_pending += "end\n";
}

bool Journal::flush() {
    if (m_pending.isEmpty() || !m_file.isOpen()) {
        return m_file.isOpen();
    }
    const qint64 before = m_file.pos();
    if (m_file.write(m_pending) != m_pending.size() || !m_file.flush()) {
        m_file.resize(before);  // no half lines twice
        m_file.seek(before);
        return false;
    }
    m_pending.clear();
    m_syncing->ask();
    return !m_syncing->hasFailed();
}

void Journal::discard() {
    m_pending.clear();
    m_file.remove();
    m_lock.unlock();
}

std::optional<JournalRead> readJournal(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly) || file.size() > kLargestJournal) {
        return std::nullopt;
    }
    const QByteArray bytes = file.readAll();
    JournalReader reader;
    bool isFirst = true;
    for (qsizetype at = 0, end = 0; (end = bytes.indexOf('\n', at)) >= 0; at = end + 1) {
        const QByteArray line = bytes.mid(at, end - at);
        if (isFirst && line != kJournalHead) {
            return std::nullopt;
        }
        if (!isFirst) {
            reader.line(line);
        }
        isFirst = false;
    }
    return reader.result();
}

std::vector<QString> leftJournals(const QString& folder) {
    const QDir dir(folder);
    std::vector<QString> left;
    const auto names = dir.entryList({QStringLiteral("*") + QLatin1String(kJournalEnding)}, QDir::Files,
                                     QDir::Name | QDir::Reversed);
    for (const auto& name : names) {
        const QString path = dir.filePath(name);
        QLockFile lock(lockOf(path));
        lock.setStaleLockTime(0);
        if (lock.tryLock(0)) {
            left.push_back(path);
        }
    }
    return left;
}

std::vector<LeftRecording> leftRecordings(const QString& folder, bool ofAir, std::size_t most) {
    struct Left {
        QString path;
        JournalRead read;
    };
    std::vector<Left> all;
    // Two for each that is shown: more are not read.
    for (const auto& path : leftJournals(folder)) {
        auto read = all.size() < 2 * most ? readJournal(path) : std::nullopt;
        if (read && read->taken.air.empty() != ofAir) {
            all.push_back({path, std::move(*read)});
        }
    }
    const auto nameOf = [](const Left& left) { return QFileInfo(left.path).fileName(); };
    std::vector<LeftRecording> recordings;
    for (auto& first : all) {
        const bool isSecond = std::any_of(all.begin(), all.end(), [&](const Left& other) {
            return !first.read.beside.isEmpty() && nameOf(other) == first.read.beside;
        });
        if (isSecond || recordings.size() == most) {
            continue;
        }
        auto& recording = recordings.emplace_back(LeftRecording{{first.path}, first.read.taken});
        const auto second = std::find_if(
            all.begin(), all.end(), [&](const Left& other) { return other.read.beside == nameOf(first); });
        if (second != all.end()) {
            recording.paths.push_back(second->path);
            recording.taken.beside.push_back(second->read.taken);
        }
    }
    return recordings;
}

void discardJournal(const QString& path) {
    QFile::remove(path);
}

}  // namespace hearth::ui::gauge
