// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What nearly every file of core includes anyway, read once a folder instead of once a file.
#include <algorithm>
#include <array>
#include <chrono>
#include <cmath>
#include <cstdint>
#include <filesystem>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include <tl/expected.hpp>
