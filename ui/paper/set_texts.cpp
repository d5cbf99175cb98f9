// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/set_texts.h"

#include <QCoreApplication>
#include <QThread>
#include <QThreadStorage>

namespace hearth::ui::paper {

namespace {

constexpr qsizetype kCostOfEntry = 8;  // what an entry holds besides its letters, in letters

QThreadStorage<SetTexts*>& allThreadsSetTexts() {
    static QThreadStorage<SetTexts*> storage;
    return storage;
}

qsizetype costOf(const SetKey& key) {
    return key.text.size() + kCostOfEntry;
}

}  // namespace

bool SetKey::operator==(const SetKey& other) const {
    return text == other.text && style == other.style && width == other.width;
}

size_t qHash(const SetKey& key, size_t seed) {
    return qHashMulti(seed, key.text, key.style.points, key.style.isBold, static_cast<int>(key.style.role),
                      key.style.leading, key.style.letterSpacing, key.width);
}

SetTexts& SetTexts::ofThread() {
    auto& storage = allThreadsSetTexts();
    if (!storage.hasLocalData()) {
        storage.setLocalData(new SetTexts);
        const auto* application = QCoreApplication::instance();
        if (application != nullptr && QThread::currentThread() == application->thread()) {
            qAddPostRoutine([] { allThreadsSetTexts().setLocalData(nullptr); });
        }
    }
    return *storage.localData();
}

void SetTexts::keepLines(const SetKey& key, const std::vector<TextItem>& lines) {
    m_lines.insert(key, new std::vector<TextItem>(lines), costOf(key));
}

std::optional<double> SetTexts::width(const SetKey& key) const {
    const double* width = m_widths.object(key);
    return width != nullptr ? std::optional(*width) : std::nullopt;
}

void SetTexts::keepWidth(const SetKey& key, double width) {
    m_widths.insert(key, new double(width), costOf(key));
}

}  // namespace hearth::ui::paper
