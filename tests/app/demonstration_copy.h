// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/app/program.h"

#include <gtest/gtest.h>
#include <memory>
#include <string>

namespace hearth::testing {

/// Commands on a copy of the demonstration firm's store, which is made once: it takes some seconds.
class DemonstrationCopy : public ::testing::Test {
  protected:
    void SetUp() override { std::filesystem::copy_file(original().home() / "demonstration.hearth", store); }
    [[nodiscard]] Program::Run run(const QStringList& words) const {
        return program.run(words +
                           QStringList{QStringLiteral("--store"), QString::fromStdString(store.string())});
    }
    [[nodiscard]] Program::Run run(const std::string& line) const {
        return run(QString::fromStdString(line).split(QLatin1Char(' '), Qt::SkipEmptyParts));
    }
    [[nodiscard]] std::string inHome(const std::string& name) const {
        return (program.home() / name).string();
    }
    /// The number of the record on a line of the list.
    [[nodiscard]] std::string recordOn(int line) const {
        return QString::fromStdString(run("records").out)
            .section(QLatin1Char('\n'), line, line)
            .section(QLatin1Char(' '), 0, 0)
            .toStdString();
    }

    Program program;
    std::filesystem::path store = program.home() / "demonstration.hearth";

  private:
    static Program& original() {
        static const std::unique_ptr<Program> kOriginal = [] {
            auto made = std::make_unique<Program>();
            const auto done = made->run("demonstration --into " + made->home().path().string());
            if (done.exitCode != 0) {
                throw std::runtime_error(done.error);
            }
            return made;
        }();
        return *kOriginal;
    }
};

}  // namespace hearth::testing
