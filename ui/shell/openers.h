// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/kind.h"
#include "core/register/model.h"
#include "core/rulebook/entry.h"
#include "core/store/store.h"

#include <string>
#include <vector>

/// What a place can open. The window finds the place for a Navigator call by these (dynamic_cast over its
/// places), so that neither shell nor a place has to know another place. A place implements those that it
/// can, beside shell::Place. The window brings the place into view first (Place::refresh() has then been
/// called), then calls the opener, then Place::takeFocus() is NOT called: the opener puts the focus where the
/// work goes on.
namespace hearth::ui::shell {

class PremisesOpener {
  public:
    virtual ~PremisesOpener() = default;
    virtual void openPremises(reg::PremisesId id) = 0;
};

/// A visit that has just been started is opened the same way (the window makes it).
class VisitOpener {
  public:
    virtual ~VisitOpener() = default;
    virtual void openVisit(reg::VisitId id) = 0;
};

class RecordOpener {
  public:
    virtual ~RecordOpener() = default;
    virtual void openRecord(store::RecordId id) = 0;
};

class RuleOpener {
  public:
    virtual ~RuleOpener() = default;
    virtual void openRule(const rulebook::RuleKey& key) = 0;
};

class FirmOpener {
  public:
    virtual ~FirmOpener() = default;
    virtual void openFirm(record::Field field, const std::string& of) = 0;
};

class OverdueOpener {
  public:
    virtual ~OverdueOpener() = default;
    /// The list of what is overdue, with these chosen.
    virtual void openOverdue(const std::vector<reg::PremisesId>& premises) = 0;
};

}  // namespace hearth::ui::shell
