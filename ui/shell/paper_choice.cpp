// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/paper_choice.h"

namespace hearth::ui::shell {
namespace {

constexpr const char* kLetterChosen = "letter";

}  // namespace

record::Paper firmsPaper(const store::Store& store) {
    const auto chosen = store.setting(kPaperSetting);
    return chosen && *chosen == kLetterChosen ? record::Paper::Letter : record::Paper::A4;
}

Result<void> keepPaper(store::Store& store, record::Paper paper) {
    return store.saveSetting(kPaperSetting, paper == record::Paper::Letter ? kLetterChosen : "");
}

}  // namespace hearth::ui::shell
