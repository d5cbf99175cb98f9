// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/sealing.h"

#include "core/record/snapshot.h"

#include <QRandomGenerator>

#include <vector>

namespace hearth::store {
namespace {

/// What a digest is taken of, part by part.
class Parts {
  public:
    void add(std::string_view text) {
        m_text.append(std::to_string(text.size())).append(":").append(text).append(",");
    }
    void addOrNothing(const std::optional<std::string>& text) {
        text ? add(std::string_view(*text)) : addNothing();
    }
    void addNothing() { m_text.append("-,"); }
    [[nodiscard]] std::string digest() const { return record::sha256(m_text); }

  private:
    std::string m_text;
};

struct SealedLine {
    std::int64_t position = 0;
    std::string at;
    std::string digest;
};

std::optional<std::string> textOrNull(const Columns& columns, int column) {
    return columns.isNull(column) ? std::nullopt : std::optional<std::string>(columns.text(column));
}

std::string hexText(const std::string& bytes) {
    constexpr std::string_view kDigits = "0123456789abcdef";
    std::string text;
    for (const char c : bytes) {
        const auto byte = static_cast<unsigned char>(c);
        text += kDigits[byte >> 4U];
        text += kDigits[byte & 0x0FU];
    }
    return text;
}

std::string textsDigest(const std::optional<std::string>& salt, const std::optional<std::string>& before,
                        const std::optional<std::string>& after) {
    Parts parts;
    parts.addOrNothing(salt);
    parts.addOrNothing(before);
    parts.addOrNothing(after);
    return parts.digest();
}

constexpr std::string_view kLineColumns =
    "position, id, group_id, store, visit, premises, table_name, row_id, field, by, at, salt, before, after, "
    "texts";

/// The digest of the texts at the end of kLineColumns.
std::string textsOf(const Columns& columns, int salt) {
    if (!columns.isNull(salt + 3)) {
        return columns.text(salt + 3);
    }
    const auto saltText =
        columns.isNull(salt) ? std::nullopt : std::optional<std::string>(hexText(columns.bytes(salt)));
    return textsDigest(saltText, textOrNull(columns, salt + 1), textOrNull(columns, salt + 2));
}

SealedLine sealedLineOf(const Columns& columns) {
    Parts parts;
    parts.add(std::to_string(columns.integer(0)));
    for (int i = 1; i <= 5; ++i) {
        columns.isNull(i) ? parts.addNothing() : parts.add(uuidText(columns.uuid(i)));
    }
    for (int i = 6; i <= 10; ++i) {
        parts.add(columns.text(i));
    }
    parts.add(textsOf(columns, 11));
    return {columns.integer(0), columns.text(10), parts.digest()};
}

struct Seal {
    std::int64_t position = 0;
    std::string previous;
    std::string digest;
};

/// A seal in the making: lines are added in order.
class SealOver {
  public:
    SealOver(const std::string& previous, std::int64_t position) {
        m_parts.add(previous);
        m_parts.add(std::to_string(position));
    }
    void add(const SealedLine& line) { m_parts.add(line.digest); }
    [[nodiscard]] std::string digest() const { return m_parts.digest(); }

  private:
    Parts m_parts;
};

[[noreturn]] void brokenAt(const SealedLine& line) {
    throw Failure(ErrorCode::ChangeLogBroken, {std::to_string(line.position), line.at});
}

/// Holds the lines, which come in order, against the seals.
class SealCheck {
  public:
    explicit SealCheck(std::vector<Seal> seals) : m_seals(std::move(seals)) { begin(); }

    void take(const SealedLine& line) {
        if (m_next == m_seals.size() || line.position > m_seals[m_next].position) {
            brokenAt(m_first ? *m_first : line);  // no seal, or the seal's last line is gone
        }
        m_first = m_first ? m_first : line;
        m_over->add(line);
        if (line.position == m_seals[m_next].position) {
            end();
        }
    }
    void finish() const {
        if (m_next < m_seals.size()) {  // a seal over lines that are gone
            brokenAt(m_first ? *m_first : SealedLine{m_seals[m_next].position, m_lastAt, {}});
        }
    }

  private:
    void begin() {
        m_first.reset();
        if (m_next < m_seals.size()) {
            m_over.emplace(m_previous, m_seals[m_next].position);
        }
    }
    void end() {
        const Seal& seal = m_seals[m_next];
        if (seal.previous != m_previous || seal.digest != m_over->digest()) {
            brokenAt(*m_first);
        }
        m_lastAt = m_first->at;
        m_previous = seal.digest;
        ++m_next;
        begin();
    }

    std::vector<Seal> m_seals;
    std::size_t m_next = 0;
    std::string m_previous;
    std::string m_lastAt;
    std::optional<SealedLine> m_first;  // under the seal at m_next
    std::optional<SealOver> m_over;
};

}  // namespace

Blob newSalt() {
    std::string bytes;
    for (int i = 0; i < 2; ++i) {
        auto bits = QRandomGenerator::system()->generate64();
        for (int j = 0; j < 8; ++j) {
            bytes += static_cast<char>(bits & 0xFFU);
            bits >>= 8U;
        }
    }
    return {bytes};
}

void sealChanges(Connection& db) {
    const auto last =
        db.first("SELECT position, previous, digest FROM change_seals ORDER BY position DESC LIMIT 1", {},
                 [](const Columns& columns) {
                     return Seal{columns.integer(0), columns.text(1), columns.text(2)};
                 });
    const std::int64_t from = last ? last->position : 0;
    const std::int64_t to = db.number("SELECT coalesce(max(position), 0) FROM changes");
    if (to <= from) {
        return;
    }
    const std::string previous = last ? last->digest : std::string();
    SealOver seal(previous, to);
    db.query("SELECT " + std::string(kLineColumns) + " FROM changes WHERE position > ? ORDER BY position",
             {from}, [&](const Columns& columns) { seal.add(sealedLineOf(columns)); });
    db.run("INSERT INTO change_seals (position, previous, digest) VALUES (?, ?, ?)",
           {to, previous, seal.digest()});
}

void verifySeals(const Connection& db) {
    SealCheck check(db.all("SELECT position, previous, digest FROM change_seals ORDER BY position", {},
                           [](const Columns& columns) {
                               return Seal{columns.integer(0), columns.text(1), columns.text(2)};
                           }));
    db.query("SELECT " + std::string(kLineColumns) + " FROM changes ORDER BY position", {},
             [&](const Columns& columns) { check.take(sealedLineOf(columns)); });
    check.finish();
}

void eraseTexts(Session& session, const std::string& table, const std::string& row) {
    Transaction transaction(session.db);
    const auto lines = session.db.all(
        "SELECT id, salt, before, after, texts FROM changes WHERE table_name = ? AND row_id = ? AND "
        "erased_at "
        "IS NULL",
        {table, row}, [](const Columns& columns) { return std::pair(columns.uuid(0), textsOf(columns, 1)); });
    for (const auto& [id, texts] : lines) {
        session.db.run(
            "UPDATE changes SET before = NULL, after = NULL, salt = NULL, texts = ?, erased_at = ? WHERE id "
            "= ?",
            {texts, instantText(session.clock.now()), id});
    }
    transaction.commit();
    session.undoable.clear();  // there is nothing to bring back
}

}  // namespace hearth::store
