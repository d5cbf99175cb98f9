// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QTranslator>

namespace hearth::ui::words {

/// A language that nobody speaks, for tests and the gallery: every text gets brackets (a text that is cut off
/// lacks one), accents (a text that is not translated lacks them) and 40 % more length (as other languages
/// need). Placeholders
/// (%1, %n), mnemonics (&), tags and line breaks stay. Plural forms come from the English catalogue beneath
/// it.
class PseudoTranslator : public QTranslator {
  public:
    /// `english`: for the plural forms; may be null. Not owned.
    explicit PseudoTranslator(const QTranslator* english = nullptr, QObject* parent = nullptr);

    [[nodiscard]] QString translate(const char* context, const char* source,
                                    const char* disambiguation = nullptr, int count = -1) const override;
    [[nodiscard]] bool isEmpty() const override { return false; }

  private:
    const QTranslator* m_english;
};

/// The pseudo-locale's form of an English text. An empty text stays empty.
[[nodiscard]] QString pseudo(const QString& english);

}  // namespace hearth::ui::words
