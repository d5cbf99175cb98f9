// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/gauge/profile.h"
#include "ui/words/words.h"

#include <QByteArray>
#include <QWidget>

#include <deque>
#include <memory>
#include <vector>

class QVBoxLayout;

namespace hearth::ui::input {
class Editor;
}
namespace hearth::ui::shell {
class KeyButton;
class Text;
}  // namespace hearth::ui::shell

namespace hearth::ui::gauge {

/// Where a gauge is described that sends its readings: how it is connected, and where in a line the reading
/// stands. What it sends can be listened to meanwhile: each line with the reading that the pattern finds in
/// it, or why it finds none. Nothing of that is kept.
class ProfilesPanel : public QWidget {
    Q_OBJECT
    Q_DISABLE_COPY_MOVE(ProfilesPanel)
  public:
    /// `reads`: pressures, or carbon monoxide (UnitFamily::Trace), of which the unit is ppm and no other.
    ProfilesPanel(std::vector<GaugeProfile> profiles, quantity::UnitFamily reads, const Clock& clock,
                  const words::Words& words, QWidget* parent);
    ~ProfilesPanel() override;

    [[nodiscard]] const std::vector<GaugeProfile>& profiles() const { return m_profiles; }
    void takeFocus();

  Q_SIGNALS:
    /// A profile was made, changed or removed.
    void profilesChanged(const std::vector<hearth::ui::gauge::GaugeProfile>& profiles);

  private:
    void addConnection(QVBoxLayout* lines);
    void addPattern(QVBoxLayout* lines);
    void addAsking(QVBoxLayout* lines);
    /// Into the profile; false: what stands there can't be used, which is said.
    [[nodiscard]] bool takeAsking(GaugeProfile& profile) const;
    void addButtons(QVBoxLayout* lines);
    void setWords(shell::KeyButton* button, const QString& text) const;
    input::Editor* keep(input::Editor* editor, const QString& label, const char* name);
    void listProfiles();
    void showProfile(const GaugeProfile& profile);
    void showKind();
    /// As it stands in the fields; what can't be used is said below its field.
    [[nodiscard]] std::optional<GaugeProfile> asTyped(bool wantsPattern);
    [[nodiscard]] exchange::LinePattern patternAsTyped() const;
    [[nodiscard]] std::optional<int> wholeNumber(input::Editor* editor, int most) const;
    void toggleListening();
    void stopListening();
    void hear(const QByteArray& line);
    void showHeard();
    [[nodiscard]] QString refusalText(const exchange::LineRefusal& refusal) const;
    void guess();
    void save();
    void remove();

    static constexpr std::size_t kLinesShown = 8;

    [[nodiscard]] bool readsAir() const { return m_reads == quantity::UnitFamily::Trace; }
    [[nodiscard]] GaugeProfile newProfile() const;
    [[nodiscard]] std::vector<quantity::UnitCode> units() const;

    std::vector<GaugeProfile> m_profiles;
    quantity::UnitFamily m_reads;
    const Clock& m_clock;
    const words::Words& m_words;
    int m_at = -1;  // of the profile that is changed; -1: a new one
    std::unique_ptr<Source> m_source;
    GaugeProfile m_listensTo;
    std::deque<QByteArray> m_heard;

    QWidget* m_choiceHome = nullptr;
    input::Editor* m_choice = nullptr;
    input::Editor* m_name = nullptr;
    input::Editor* m_kind = nullptr;
    input::Editor* m_port = nullptr;
    input::Editor* m_speed = nullptr;
    input::Editor* m_host = nullptr;
    input::Editor* m_networkPort = nullptr;
    input::Editor* m_pattern = nullptr;
    input::Editor* m_mark = nullptr;
    input::Editor* m_unit = nullptr;
    input::Editor* m_resolution = nullptr;
    input::Editor* m_ask = nullptr;
    input::Editor* m_askEvery = nullptr;
    shell::Text* m_state = nullptr;
    shell::Text* m_lines = nullptr;
    shell::KeyButton* m_listen = nullptr;
    shell::KeyButton* m_guess = nullptr;
    shell::KeyButton* m_remove = nullptr;
};

}  // namespace hearth::ui::gauge
