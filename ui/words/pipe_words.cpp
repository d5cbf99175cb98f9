// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/pipe_words.h"

#include "core/pipework/figures.h"
#include "core/quantity/units.h"
#include "core/register/pipe_tree.h"

#include <QStringList>

#include <algorithm>
#include <cmath>

namespace hearth::ui::words {

namespace {

using pipework::FlowBasis;

constexpr int kSketchVolumeDecimals = 6;

QString dotted(QStringList parts) {
    parts.removeAll(QString());
    return parts.join(QStringLiteral(" \u00B7 "));
}

QString typedFigure(const Words& words, const quantity::Typed& typed) {
    if (typed.text.empty()) {
        return {};
    }
    const auto value = typed.value();
    return value ? words.figure({*value, typed.unit}) : QString::fromStdString(typed.text);
}

/// One sketch in the making.
class SketchWords {
  public:
    explicit SketchWords(const PipeSource& source) : m_source(source), m_worst(source.file.pipes.size()) {
        if (source.pipes != nullptr && source.pipes->isAsked && source.pipes->worked.design) {
            m_design = &*source.pipes->worked.design;
            m_measured = source.pipes->worked.measured ? &*source.pipes->worked.measured : nullptr;
            markWorst();
        }
    }

    [[nodiscard]] record::Diagram diagram() const {
        record::Diagram diagram;
        const auto* meter = pipework::meterByCode(m_source.file.installation.meterCode);
        diagram.start = utf8(meter != nullptr ? m_source.words.meter(*meter)
                                              : say(QT_TRANSLATE_NOOP("Words", "meter not said")));
        for (const auto& drawn : reg::drawTree(m_source.file.pipes).sections) {
            diagram.sections.push_back(section(drawn));
        }
        diagram.goesOn = utf8(say(QT_TRANSLATE_NOOP("Words", "goes on in the list below")));
        diagram.after = utf8(say(QT_TRANSLATE_NOOP("Words", "after %1"), {QStringLiteral("%1")}));
        addNotes(diagram);
        return diagram;
    }

  private:
    [[nodiscard]] QString say(const char* english, const QStringList& arguments = {}) const {
        return m_source.words.say(english, arguments);
    }
    static std::string utf8(const QString& text) { return text.toStdString(); }

    /// Only where the drop of every route is known: the largest of some says nothing.
    void markWorst() {
        const auto& routes = m_design->routes;
        const bool allKnown = std::all_of(routes.begin(), routes.end(), [](const pipework::RouteDrop& route) {
            return route.drop.has_value();
        });
        if (!allKnown || routes.size() < 2 || !m_design->worst) {
            return;
        }
        m_worstEnd = routes[*m_design->worst].end;
        for (const auto index : m_source.pipes->tree->route(*m_worstEnd)) {
            m_worst[index] = true;
        }
    }

    [[nodiscard]] record::DiagramSection section(const reg::DrawnSection& drawn) const {
        const auto& pipe = m_source.file.pipes[drawn.index];
        const auto* tube = pipework::tubeByCode(pipe.tubeCode);
        record::DiagramSection section;
        section.column = drawn.column;
        section.row = drawn.row;
        section.fromRow = drawn.fromRow;
        section.diameter = tube != nullptr ? static_cast<int>(std::lround(tube->nominal)) : 0;
        section.isTested = pipe.underTest;
        section.isOnWorst = m_worst[drawn.index];
        section.number = std::to_string(drawn.index + 1);
        section.isEnd = drawn.isEnd;
        section.above =
            utf8(dotted({tube != nullptr ? m_source.words.tube(*tube) : QString::fromStdString(pipe.tubeCode),
                         typedFigure(m_source.words, pipe.length)}));
        const auto& volumes = m_source.volume.sections;
        QStringList below{QString::fromStdString(pipe.leadsTo)};
        if (drawn.index < volumes.size() && volumes[drawn.index].volume) {
            below << m_source.words.figure(
                {quantity::Decimal::rounded(volumes[drawn.index].volume->in(quantity::kCubicMetre),
                                            kSketchVolumeDecimals),
                 quantity::UnitCode::CubicMetre});
        }
        QStringList end = endOf(pipe);
        end << dropsTo(drawn.index);
        if (section.isEnd) {
            for (const auto& text : end) {
                section.end.push_back(utf8(text));
            }
        } else {
            below << end;  // drawn on the way: nothing may stand in the way of what goes on
        }
        section.below = utf8(dotted(below));
        return section;
    }

    [[nodiscard]] QStringList endOf(const reg::PipeSection& pipe) const {
        if (pipe.capped) {
            return {say(QT_TRANSLATE_NOOP("Words", "capped"))};
        }
        if (!pipe.appliance) {
            return {};
        }
        const auto& known = m_source.file.appliances;
        const auto at = std::find_if(known.begin(), known.end(),
                                     [&](const reg::Appliance& one) { return one.id == *pipe.appliance; });
        if (at == known.end()) {
            return {say(QT_TRANSLATE_NOOP("Words", "appliance taken away"))};
        }
        const QString kind = at->kind.empty() ? say(QT_TRANSLATE_NOOP("Words", "appliance, kind not entered"))
                                              : m_source.words.choice(reg::Item::ApplianceKind, at->kind);
        return {at->place.empty() ? kind
                                  : kind + QStringLiteral(" (") + QString::fromStdString(at->place) + u')'};
    }

    [[nodiscard]] QStringList dropsTo(std::size_t end) const {
        QStringList lines;
        if (m_design == nullptr) {
            return lines;
        }
        const auto* design = routeTo(*m_design, end);
        if (design == nullptr) {
            return lines;
        }
        if (!design->drop) {
            lines << say(QT_TRANSLATE_NOOP("Words", "drop not known"));
        } else if (design->unsaid) {
            lines << say(QT_TRANSLATE_NOOP("Words", "at least %1 lost at full load, fittings not said"),
                         {figure(*design->drop)});
        } else {
            lines << say(QT_TRANSLATE_NOOP("Words", "%1 lost at full load"), {figure(*design->drop)});
        }
        if (m_worstEnd == end) {
            lines.last() += QStringLiteral(" \u2013 ") + say(QT_TRANSLATE_NOOP("Words", "the most"));
        }
        const auto* measured = m_measured == nullptr ? nullptr : routeTo(*m_measured, end);
        if (measured != nullptr && measured->drop) {
            lines << (measured->unsaid
                          ? say(QT_TRANSLATE_NOOP("Words", "at least %1 lost as timed"),
                                {figure(*measured->drop)})
                          : say(QT_TRANSLATE_NOOP("Words", "%1 lost as timed"), {figure(*measured->drop)}));
        }
        return lines;
    }

    static const pipework::RouteDrop* routeTo(const pipework::DropReport& report, std::size_t end) {
        const auto at = std::find_if(report.routes.begin(), report.routes.end(),
                                     [&](const pipework::RouteDrop& route) { return route.end == end; });
        return at == report.routes.end() ? nullptr : &*at;
    }
    [[nodiscard]] QString figure(quantity::PressureChange drop) const {
        return m_source.words.figure(pipework::figureOf(drop));
    }

    void addNotes(record::Diagram& diagram) const {
        const auto& pipes = m_source.file.pipes;
        if (std::any_of(pipes.begin(), pipes.end(),
                        [](const reg::PipeSection& pipe) { return !pipe.underTest; })) {
            diagram.notes.push_back(utf8(say(QT_TRANSLATE_NOOP("Words", "Dashed: not under test."))));
        }
        if (m_design != nullptr) {
            diagram.notes.push_back(
                utf8(say(QT_TRANSLATE_NOOP("Words",
                                           "What is lost is worked out from sizes, lengths, fittings and "
                                           "flows by the law for smooth pipe; "
                                           "it was not measured. The limit stands with the findings."))));
        }
    }

    const PipeSource& m_source;
    const pipework::DropReport* m_design = nullptr;
    const pipework::DropReport* m_measured = nullptr;
    std::vector<bool> m_worst;  // by index in the list
    std::optional<std::size_t> m_worstEnd;
};

}  // namespace

record::Diagram pipeDiagram(const PipeSource& source) {
    return SketchWords(source).diagram();
}

QString diagramInWords(const record::Diagram& diagram) {
    QStringList lines{QString::fromStdString(diagram.start)};
    for (const auto& section : diagram.sections) {
        QStringList parts{QString::fromStdString(section.above), QString::fromStdString(section.below)};
        for (const auto& end : section.end) {
            parts << QString::fromStdString(end);
        }
        parts.removeAll(QString());
        lines << QString::fromStdString(section.number) + QStringLiteral(": ") +
                     parts.join(QStringLiteral(", "));
    }
    for (const auto& note : diagram.notes) {
        lines << QString::fromStdString(note);
    }
    return lines.join(u'\n');
}

}  // namespace hearth::ui::words
