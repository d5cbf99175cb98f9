// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pipework/fittings_text.h"
#include "ui/visit/pipe_table.h"
#include "ui/visit/subject_name.h"

#include <algorithm>

/// The columns of a section's fittings and of what hangs at its end.
namespace hearth::ui::visit {

using quantity::Typed;
using quantity::UnitCode;
using reg::PipeSection;

namespace {

constexpr auto kCappedEnd = "capped";

}  // namespace

std::vector<input::ChoiceItem> PipeTable::endChoices() const {
    std::vector<input::ChoiceItem> ends{{QString(), tr("not said")},
                                        {QString::fromLatin1(kCappedEnd), tr("capped")}};
    const auto& file = m_context.model.file();
    for (const auto& appliance : file.appliances) {
        ends.push_back({QString::fromStdString(appliance.id.text()),
                        subjectName(reg::subject(appliance.id), file, m_context.window.words)});
    }
    return ends;
}

FieldBinding PipeTable::fittingsBinding(std::size_t row) {
    return {[this, row] {
                const auto& pipes = m_context.model.file().pipes;
                return Typed{row < pipes.size() ? pipes[row].fittings : std::string(), UnitCode::None};
            },
            [this, row](const QString& text, UnitCode) -> Result<void> {
                if (row >= m_context.model.file().pipes.size() && text.isEmpty()) {
                    return {};
                }
                return change(row, [&](PipeSection& pipe) { pipe.fittings = text.toStdString(); });
            },
            [](const std::string& text) -> Result<void> {
                return pipework::readFittings(text).unreadable ? fail(ErrorCode::ChoiceUnknown, {text})
                                                               : Result<void>();
            },
            [](const std::string&) {
                return tr(
                    "Not understood, so the drop is worked out without. Type how many of which: 3 elbows 1 "
                    "tee 2 bends 1 45; or what they are worth with its unit: 1.5 m; or none.");
            }};
}

FieldBinding PipeTable::endBinding(std::size_t row) {
    return {[this, row] {
                const auto& pipes = m_context.model.file().pipes;
                std::string code;
                if (row < pipes.size()) {
                    code = pipes[row].capped      ? kCappedEnd
                           : pipes[row].appliance ? pipes[row].appliance->text()
                                                  : std::string();
                }
                return Typed{code, UnitCode::None};
            },
            [this, row](const QString& text, UnitCode) -> Result<void> {
                if (row >= m_context.model.file().pipes.size() && text.isEmpty()) {
                    return {};
                }
                const auto id = uuidFromText(text.toStdString());
                return change(row, [&](PipeSection& pipe) {
                    pipe.capped = text == QLatin1String(kCappedEnd);
                    pipe.appliance = id ? std::optional(reg::ApplianceId{*id}) : std::nullopt;
                });
            },
            {}};
}

bool PipeTable::asksForEnds() const {
    const auto& file = m_context.model.file();
    return !file.appliances.empty() ||
           std::any_of(file.pipes.begin(), file.pipes.end(), [](const PipeSection& pipe) {
               return pipe.appliance || pipe.capped || !pipe.fittings.empty();
           });
}

}  // namespace hearth::ui::visit
