// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/judging/leak_hunt.h"
#include "core/store/store.h"

#include <optional>
#include <vector>

namespace hearth::ui::visit {

/// What the traces of a visit's tests tell, and the tests compared: read, fitted and compared once for the
/// whole sheet, however many parts show it.
class SheetTraces {
  public:
    explicit SheetTraces(const store::Store& store) : m_store(store) {}

    /// The file was judged or read anew: what follows from it is worked out when it is next asked for.
    void forgetHunt() { m_hunt.reset(); }
    [[nodiscard]] const judging::LeakHunt& hunt(const reg::VisitFile& file, const rulebook::RuleBook& book);
    /// How many traces were read from the store, and fitted, so far.
    [[nodiscard]] int reads() const { return m_reads; }
    [[nodiscard]] int fits() const { return m_fits; }

  private:
    void readAnew(const reg::VisitFile& file);
    void fitAnew(const reg::VisitFile& file, const rulebook::RuleBook& book);

    const store::Store& m_store;
    struct Read {
        reg::GaugeTrace kept;
        std::optional<judging::TraceSeen> seen;  // nothing: it can't be read
        bool isFitted = false;
    };
    std::vector<Read> m_read;
    std::optional<judging::LeakHunt> m_hunt;
    int m_reads = 0;
    int m_fits = 0;
};

}  // namespace hearth::ui::visit
