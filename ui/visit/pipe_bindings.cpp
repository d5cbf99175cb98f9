// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/register/pipe_tree.h"
#include "ui/visit/pipe_table.h"
#include "ui/visit/register_fields.h"
#include "ui/visit/tube_text.h"

/// What the fields of a section's first line show, and how what is typed there is kept.
namespace hearth::ui::visit {

using quantity::Typed;
using quantity::UnitCode;
using reg::PipeSection;

FieldBinding PipeTable::tubeBinding(std::size_t row) {
    // What can't be understood is kept in place of the code, so that it is there tomorrow.
    return {[this, row] {
                const auto& pipes = m_context.model.file().pipes;
                const std::string code = row < pipes.size() ? pipes[row].tubeCode : std::string();
                const pipework::Tube* tube = pipework::tubeByCode(code);
                return Typed{tube != nullptr ? m_context.window.words.tube(*tube).toStdString() : code,
                             UnitCode::None};
            },
            [this, row](const QString& text, UnitCode) -> Result<void> {
                const auto& pipes = m_context.model.file().pipes;
                if (row >= pipes.size() && text.isEmpty()) {
                    return {};
                }
                const TubeReading reading = readTube(text);
                const std::string code =
                    reading.tube != nullptr ? std::string(reading.tube->code) : text.toStdString();
                auto kept = change(row, [&](PipeSection& pipe) { pipe.tubeCode = code; });
                if (kept && reading.tube != nullptr) {
                    refillAt(row, Tube);
                }
                return kept;
            },
            [this, row](const std::string& text) -> Result<void> {
                const auto& pipes = m_context.model.file().pipes;
                const bool known = row < pipes.size() && pipework::tubeByCode(pipes[row].tubeCode) != nullptr;
                return known ? Result<void>() : fail(ErrorCode::TubeUnknown, {text});
            },
            [this](const std::string& text) {
                return whichOf(readTube(QString::fromStdString(text)).candidates);
            }};
}

/// "Which is it: …?" where a size could be of several kinds; empty where nothing fits at all.
QString PipeTable::whichOf(const std::vector<const pipework::Tube*>& candidates) const {
    QStringList names;
    for (const pipework::Tube* tube : candidates) {
        names << m_context.window.words.tube(*tube);
    }
    return names.size() < 2 ? QString() : tr("Say which: %1.").arg(names.join(QStringLiteral(", ")));
}

FieldBinding PipeTable::figureBinding(std::size_t row, Typed PipeSection::*column) {
    return {
        [this, row, column] {
            const auto& pipes = m_context.model.file().pipes;
            return row < pipes.size() ? pipes[row].*column : Typed{};
        },
        [this, row, column](const QString& text, UnitCode unit) {
            return change(row, [&](PipeSection& pipe) { pipe.*column = Typed{text.toStdString(), unit}; });
        },
        isNumber};
}

FieldBinding PipeTable::leadsToBinding(std::size_t row) {
    return {[this, row] {
                const auto& pipes = m_context.model.file().pipes;
                return Typed{row < pipes.size() ? pipes[row].leadsTo : std::string(), UnitCode::None};
            },
            [this, row](const QString& text, UnitCode) {
                return change(row, [&](PipeSection& pipe) { pipe.leadsTo = text.toStdString(); });
            },
            {}};
}

FieldBinding PipeTable::afterBinding(std::size_t row) {
    const auto shown = [this, row]() -> std::string {
        const auto& pipes = m_context.model.file().pipes;
        if (row >= pipes.size()) {
            return {};
        }
        if (!pipes[row].afterText.empty()) {
            return pipes[row].afterText;
        }
        for (std::size_t at = 0; at < pipes.size(); ++at) {
            if (pipes[row].after == pipes[at].id) {
                return std::to_string(at + 1);
            }
        }
        return tr("meter").toStdString();
    };
    return {[shown] {
                return Typed{shown(), UnitCode::None};
            },
            [this, row, shown](const QString& text, UnitCode) -> Result<void> {
                const auto& pipes = m_context.model.file().pipes;
                if (row >= pipes.size()) {
                    return {};  // there is no section yet that could go on from anything
                }
                bool isNumber = false;
                const std::size_t from = text.trimmed().toUInt(&isNumber);
                const bool meter = text.trimmed().isEmpty() || (isNumber && from == 0) ||
                                   tr("meter").startsWith(text.trimmed(), Qt::CaseInsensitive);
                const bool fits = isNumber && from >= 1 && from <= pipes.size() &&
                                  mayFollow(pipes, pipes[row].id, pipes[from - 1].id);
                auto kept = change(row, [&](PipeSection& pipe) {
                    pipe.afterText = meter || fits ? std::string() : text.toStdString();
                    if (meter || fits) {
                        pipe.after = meter ? std::nullopt : std::optional(pipes[from - 1].id);
                    }
                });
                if (kept && (meter || fits)) {
                    refillAt(row, After);
                }
                return kept;
            },
            [this, row](const std::string& text) -> Result<void> {
                const auto& pipes = m_context.model.file().pipes;
                if (row >= pipes.size() || pipes[row].afterText.empty()) {
                    return {};
                }
                return fail(ErrorCode::OutOfRange, {text, "1", std::to_string(pipes.size())});
            },
            [](const std::string&) {
                return tr("No other row feeds it so. Type meter, or the number of the row before it.");
            }};
}

FieldBinding PipeTable::underTestBinding(std::size_t row) {
    return {[this, row] {
                const auto& pipes = m_context.model.file().pipes;
                const bool underTest = row >= pipes.size() || pipes[row].underTest;
                return Typed{std::string(underTest ? reg::choice::kYes : reg::choice::kNo), UnitCode::None};
            },
            [this, row](const QString& text, UnitCode) {
                const bool underTest = text.toStdString() != reg::choice::kNo;
                return change(row, [&](PipeSection& pipe) { pipe.underTest = underTest; });
            },
            {}};
}

}  // namespace hearth::ui::visit
