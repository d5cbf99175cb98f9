// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pipework/tree.h"

#include <utility>

namespace hearth::pipework {

namespace {

SectionInput treeSectionInput(const TreeSection& section, bool all) {
    SectionInput input;
    input.tube = section.tube;
    input.length = section.length;
    input.typedVolume = section.typedVolume;
    input.underTest = all || section.underTest;
    return input;
}

VolumeReport treeVolume(const Tree& tree, VolumeInput around, bool all) {
    around.sections.clear();
    around.sections.reserve(tree.sections().size());
    for (const auto& section : tree.sections()) {
        around.sections.push_back(treeSectionInput(section, all));
    }
    return volume(around);
}

/// Who comes directly after each section, as a list threaded through the sections; `none` ends it.
struct TreeFollowers {
    std::vector<std::size_t> first;
    std::vector<std::size_t> next;
    std::size_t none;

    explicit TreeFollowers(const std::vector<TreeSection>& sections)
        : first(sections.size(), sections.size()),
          next(sections.size(), sections.size()),
          none(sections.size()) {
        for (std::size_t i = sections.size(); i-- > 0;) {
            if (const auto feeder = sections[i].after) {
                next[i] = first[*feeder];
                first[*feeder] = i;
            }
        }
    }
};

}  // namespace

Result<Tree> Tree::make(std::vector<TreeSection> sections) {
    const std::size_t count = sections.size();
    for (std::size_t i = 0; i < count; ++i) {
        if (sections[i].after && *sections[i].after >= count) {
            return fail(ErrorCode::PipeFeederMissing, {std::to_string(i + 1)});
        }
    }
    const TreeFollowers followers(sections);
    Tree tree;
    tree.m_order.reserve(count);
    std::vector<bool> reached(count, false);
    const auto reach = [&](std::size_t section) {
        tree.m_order.push_back(section);
        reached[section] = true;
    };
    for (std::size_t i = 0; i < count; ++i) {
        if (!sections[i].after) {
            reach(i);
        }
    }
    for (std::size_t done = 0; done < tree.m_order.size(); ++done) {
        for (auto i = followers.first[tree.m_order[done]]; i != followers.none; i = followers.next[i]) {
            reach(i);
        }
    }
    for (std::size_t i = 0; i < count; ++i) {
        if (!reached[i]) {
            return fail(ErrorCode::PipeLoop, {std::to_string(i + 1)});
        }
        tree.m_ends.push_back(followers.first[i] == followers.none);
    }
    tree.m_sections = std::move(sections);
    return tree;
}

std::vector<std::size_t> Tree::route(std::size_t section) const {
    std::vector<std::size_t> backwards;
    for (std::optional<std::size_t> at = section; at; at = m_sections[*at].after) {
        backwards.push_back(*at);
    }
    return {backwards.rbegin(), backwards.rend()};
}

std::string Tree::nameOf(std::size_t section) const {
    const auto& name = m_sections[section].name;
    return name.empty() ? std::to_string(section + 1) : name;
}

void Tree::replace(std::size_t section, TreeSection by) {
    by.after = m_sections[section].after;  // what feeds what is not to be changed here
    m_sections[section] = std::move(by);
}

VolumeReport volumeUnderTest(const Tree& tree, VolumeInput around) {
    return treeVolume(tree, std::move(around), false);
}

VolumeReport volumeOfAll(const Tree& tree, VolumeInput around) {
    return treeVolume(tree, std::move(around), true);
}

}  // namespace hearth::pipework
