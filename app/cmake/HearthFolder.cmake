# SPDX-License-Identifier: GPL-3.0-or-later
# One static library per folder, one test binary per folder. The edges named in LINKS are the only ones that a
# folder's test binary can link, so the linker holds the layers as well as tests/system/layers_test.cpp does.

set(CMAKE_CXX_STANDARD 20)
set(CMAKE_CXX_STANDARD_REQUIRED ON)
set(CMAKE_CXX_EXTENSIONS OFF)
set(CMAKE_EXPORT_COMPILE_COMMANDS ON)
if(NOT CMAKE_BUILD_TYPE)
  set(CMAKE_BUILD_TYPE Release)
endif()

find_program(HEARTH_CCACHE ccache)
if(HEARTH_CCACHE)
  set(CMAKE_CXX_COMPILER_LAUNCHER ${HEARTH_CCACHE})
endif()

if(HEARTH_TIDY)
  find_program(HEARTH_CLANG_TIDY clang-tidy REQUIRED)
  set(CMAKE_CXX_CLANG_TIDY ${HEARTH_CLANG_TIDY} --quiet)
endif()

add_library(hearth_settings INTERFACE)
target_include_directories(hearth_settings INTERFACE "${CMAKE_SOURCE_DIR}")
target_compile_definitions(
  hearth_settings INTERFACE QT_NO_CAST_FROM_ASCII QT_NO_CAST_TO_ASCII QT_NO_KEYWORDS QT_NO_FOREACH
                            QT_DISABLE_DEPRECATED_BEFORE=0x060400 HEARTH_VERSION="${PROJECT_VERSION}")
target_compile_options(
  hearth_settings
  INTERFACE -Wall
            -Wextra
            -Wpedantic
            -Werror
            # A hidden name in judging code is a wrong limit waiting to happen. Only =local: g++ 12 takes the names of a
            # scoped enumeration for shadows of the types that are called the same.
            -Wshadow=local
            -Wconversion # readings must not lose digits silently
            -Wsign-conversion
            -Wold-style-cast
            -Wcast-qual
            -Wnon-virtual-dtor
            -Woverloaded-virtual
            -Wduplicated-cond
            -Wlogical-op
            -Wimplicit-fallthrough
            -Wno-psabi)
if(HEARTH_SANITIZE)
  target_compile_options(hearth_settings INTERFACE -fsanitize=address,undefined -fno-sanitize-recover=all
                                                   -fno-omit-frame-pointer
                                                   # g++ 12 sees it in the library's own code when instrumented
                                                   -Wno-maybe-uninitialized)
  target_link_options(hearth_settings INTERFACE -fsanitize=address,undefined)
endif()

# hearth_folder(core/quantity SOURCES a.cpp ... [LINKS Hearth::core_base Qt6::Core ...] [WIDGETS])
# Defines Hearth::core_quantity. WIDGETS switches on moc and a precompiled header of the Qt classes in common use.
function(hearth_folder folder)
  cmake_parse_arguments(ARG "WIDGETS" "" "SOURCES;LINKS" ${ARGN})
  string(REPLACE "/" "_" name ${folder})
  add_library(hearth_${name} STATIC ${ARG_SOURCES})
  add_library(Hearth::${name} ALIAS hearth_${name})
  target_link_libraries(hearth_${name} PUBLIC hearth_settings tl::expected ${ARG_LINKS})
  if(ARG_WIDGETS)
    set_target_properties(hearth_${name} PROPERTIES AUTOMOC ON)
    target_precompile_headers(hearth_${name} PRIVATE "${CMAKE_SOURCE_DIR}/ui/precompiled.h")
  endif()
endfunction()

# hearth_test(core/quantity SOURCES decimal_test.cpp ... [LINKS ...] [WIDGETS] [LABELS ...])
# Defines and registers the test binary of one folder, linked to that folder's library and what LINKS names.
# GUI tests are run offscreen; a test binary has TIMEOUT seconds (60 unless said).
function(hearth_test folder)
  cmake_parse_arguments(ARG "WIDGETS" "TIMEOUT" "SOURCES;LINKS;LABELS" ${ARGN})
  string(REPLACE "/" "_" name ${folder})
  add_executable(test_${name} ${ARG_SOURCES})
  target_link_libraries(test_${name} PRIVATE hearth_settings GTest::gmock ${ARG_LINKS})
  if(TARGET hearth_${name})
    target_link_libraries(test_${name} PRIVATE hearth_${name})
  endif()
  target_compile_definitions(test_${name} PRIVATE HEARTH_SOURCE_DIR="${CMAKE_SOURCE_DIR}"
                                                  HEARTH_BINARY_DIR="${CMAKE_BINARY_DIR}")
  if(ARG_WIDGETS)
    set_target_properties(test_${name} PROPERTIES AUTOMOC ON)
    target_precompile_headers(test_${name} PRIVATE "${CMAKE_SOURCE_DIR}/ui/precompiled.h")
    target_link_libraries(test_${name} PRIVATE Qt6::Test Qt6::Widgets)
  else()
    target_link_libraries(test_${name} PRIVATE GTest::gtest_main)
  endif()
  if(NOT ARG_TIMEOUT)
    set(ARG_TIMEOUT 60)
  endif()
  if(HEARTH_SANITIZE)
    math(EXPR ARG_TIMEOUT "${ARG_TIMEOUT} * 5") # the sanitizers make everything some times slower
  endif()
  add_test(NAME ${folder} COMMAND test_${name})
  set_tests_properties(${folder} PROPERTIES ENVIRONMENT "QT_QPA_PLATFORM=offscreen" TIMEOUT ${ARG_TIMEOUT}
                                            LABELS "${ARG_LABELS}")
  if("bench" IN_LIST ARG_LABELS)
    set_tests_properties(${folder} PROPERTIES RUN_SERIAL ON) # a figure measured beside other tests says nothing
  endif()
endfunction()
