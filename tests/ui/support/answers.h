// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paper/paper.h"
#include "ui/shell/dialogs.h"
#include "ui/shell/place.h"

#include <QStringList>

#include <deque>
#include <gtest/gtest.h>
#include <optional>
#include <string>
#include <vector>

/// Stand-ins for what would wait for a person, a printer or another place.
namespace hearth::testing {

/// Answers dialogs from a script. A question that nobody expected fails the test and gets the safe answer.
class ScriptedDialogs : public ui::shell::Dialogs {
  public:
    std::deque<int> answers;
    std::deque<std::optional<QString>> texts;
    std::deque<std::optional<QString>> files;
    QStringList told;
    QStringList asked;
    QStringList proposed;

    void tell(QWidget*, const QString&, const QString& text) override { told << text; }
    int ask(QWidget*, const QString& title, const QString& text, const QStringList& choices,
            int safe) override {
        asked << title + QStringLiteral(": ") + text;
        if (answers.empty()) {
            ADD_FAILURE() << "nobody expected to be asked: " << asked.last().toStdString();
            return safe;
        }
        const int answer = answers.front();
        answers.pop_front();
        EXPECT_LT(answer, choices.size());
        return answer;
    }
    std::optional<QString> askText(QWidget*, const QString& title, const QString& label) override {
        asked << title + QStringLiteral(": ") + label;
        return taken(texts);
    }
    std::optional<QString> saveFile(QWidget*, const QString& title, const QString& name,
                                    const QString&) override {
        asked << title;
        proposed << name;
        return taken(files);
    }
    std::deque<QStringList> chosen;
    QStringList opened;
    QStringList openFiles(QWidget*, const QString& title, const QString&) override {
        asked << title;
        if (chosen.empty()) {
            ADD_FAILURE() << "nobody expected to be asked: " << title.toStdString();
            return {};
        }
        const auto first = chosen.front();
        chosen.pop_front();
        return first;
    }
    void openDocument(QWidget*, const QString& name, const QByteArray&) override { opened << name; }

  private:
    std::optional<QString> taken(std::deque<std::optional<QString>>& from) {
        if (from.empty()) {
            ADD_FAILURE() << "nobody expected to be asked: " << asked.last().toStdString();
            return std::nullopt;
        }
        const auto first = from.front();
        from.pop_front();
        return first;
    }
};

/// Notes what was sent to the printer.
class NotedPrinting : public ui::paper::Printing {
  public:
    struct Job {
        record::Document document;
        ui::paper::PageOptions options;
        record::Paper sheet = record::Paper::A4;
    };
    std::vector<Job> jobs;
    int manys = 0;  // jobs of many; their parts are in `jobs` too
    int failsAt = -1;
    std::function<void(int parts)> afterPart;
    bool cancelled = false;
    std::optional<Error> failure;

    Result<bool> print(const record::Document& document, const ui::paper::PageOptions& options,
                       record::Paper sheet) override {
        if (failure) {
            return tl::unexpected<Error>(*failure);
        }
        if (!cancelled) {
            jobs.push_back({document, options, sheet});
        }
        return !cancelled;
    }

    ui::paper::PrintedParts printMany(const ui::paper::PrintJob& job) override {
        ui::paper::PrintedParts printed;
        printed.wanted = !cancelled;
        manys += printed.wanted ? 1 : 0;
        while (printed.wanted && !printed.failure) {
            const auto part = job.next();
            if (!part) {
                printed.failure = part.error();
            } else if (!*part) {
                break;
            } else if (printed.parts == failsAt) {
                printed.failure = failure;
            } else {
                jobs.push_back({(*part)->document, (*part)->options, job.sheet});
                ++printed.parts;
                if (afterPart) {
                    afterPart(printed.parts);
                }
            }
        }
        return printed;
    }
};

/// Notes where a place wanted to go, for a place that is shown without its window.
class NotedNavigator : public ui::shell::Navigator {
  public:
    std::vector<std::string> went;
    QStringList said;

    void openPremises(reg::PremisesId id) override { went.push_back("premises " + id.text()); }
    void startVisit(reg::PremisesId id) override { went.push_back("start visit " + id.text()); }
    void openVisit(reg::VisitId id) override { went.push_back("visit " + id.text()); }
    void openRecord(store::RecordId id) override { went.push_back("record " + id.text()); }
    void openRule(const rulebook::RuleKey& key) override {
        went.push_back("rule " + std::string(rulebook::ruleText(key.rule)));
    }
    void openFirm(record::Field field, const std::string& of) override {
        went.push_back("firm " + std::string(record::fieldCode(field)) + " " + of);
    }
    void openEmergency(rulebook::Gas gas) override {
        went.push_back("emergency " + std::string(rulebook::gasText(gas)));
    }
    void say(const QString& sentence) override { said << sentence; }
};

}  // namespace hearth::testing
