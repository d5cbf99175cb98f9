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
  # Told to trust the compiler's own list of headers, it does not preprocess every file a second time.
  set(CMAKE_CXX_COMPILER_LAUNCHER ${CMAKE_COMMAND} -E env CCACHE_DEPEND=1
                                  CCACHE_SLOPPINESS=pch_defines,time_macros ${HEARTH_CCACHE})
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
            # What g++ 12 concludes from the flow of optimised code it concludes falsely of the standard library's own
            # strings, optionals and variants: shown, but no error.
            -Wno-error=maybe-uninitialized
            -Wno-error=restrict
            -Wno-error=stringop-overflow
            -Wno-error=stringop-overread
            -Wno-error=array-bounds
            -Wno-error=null-dereference
            -Wno-error=dangling-pointer
            -Wno-error=use-after-free
            -Wno-error=free-nonheap-object
            -Wno-psabi
            -fPIC) # as Qt asks of those who use it; of all, so that one precompiled header serves all
if(HEARTH_SANITIZE)
  target_compile_options(hearth_settings INTERFACE -fsanitize=address,undefined -fno-sanitize-recover=all
                                                   -fno-omit-frame-pointer)
  target_link_options(hearth_settings INTERFACE -fsanitize=address,undefined)
endif()

if(HEARTH_FUZZ)
  # clang knows neither all of g++'s warnings nor all of its own headers' faults: g++ holds the warnings
  target_compile_options(hearth_settings INTERFACE -Wno-error -w -fsanitize=fuzzer-no-link,address
                                                   -fno-omit-frame-pointer -g1 -O1)
  target_link_options(hearth_settings INTERFACE -fsanitize=fuzzer-no-link,address)
endif()

# Headers are what compiling costs here. Reading the common ones takes as long as five files, so it is done once for all
# targets of a kind, not once a target: each kind's library holds nothing but its precompiled header.
file(CONFIGURE OUTPUT "${CMAKE_BINARY_DIR}/precompiled/nothing.cpp" CONTENT "")

function(hearth_precompiled_kind kind)
  cmake_parse_arguments(ARG "" "" "HEADERS;LINKS" ${ARGN})
  if(NOT TARGET hearth_precompiled_${kind})
    add_library(hearth_precompiled_${kind} STATIC "${CMAKE_BINARY_DIR}/precompiled/nothing.cpp")
    target_link_libraries(hearth_precompiled_${kind} PRIVATE hearth_settings tl::expected ${ARG_LINKS})
    target_precompile_headers(hearth_precompiled_${kind} PRIVATE ${ARG_HEADERS})
  endif()
endfunction()

function(hearth_precompile target folder widgets)
  set(kind core)
  set(headers "${CMAKE_SOURCE_DIR}/core/precompiled.h")
  set(links)
  if(widgets)
    set(kind ui)
    set(headers "${CMAKE_SOURCE_DIR}/ui/precompiled.h")
    set(links Qt6::Widgets)
    if(folder MATCHES "^ui/(shell|gauge|premises|visit|records|rulebook|firm)$" OR folder MATCHES "^app")
      set(kind places)
      list(APPEND headers "${CMAKE_SOURCE_DIR}/core/store/store.h")
    endif()
  endif()
  if(target MATCHES "^test_")
    string(APPEND kind _tests)
    list(APPEND headers <gmock/gmock.h>)
    list(APPEND links GTest::gmock) # not Qt6::Test, which defines something else for each target
  endif()
  hearth_precompiled_kind(${kind} HEADERS ${headers} LINKS ${links})
  if(kind MATCHES "_tests$")
    # What is tested is built as it is released; the tests themselves are half of what there is to compile.
    set(quick -O1)
    if(HEARTH_SANITIZE)
      set(quick -O0) # with sanitizers it compiles in half the time, and what is tested keeps its own
    endif()
    target_compile_options(${target} PRIVATE ${quick})
    if(NOT hearth_${kind}_is_quick)
      target_compile_options(hearth_precompiled_${kind} PRIVATE ${quick})
      set(hearth_${kind}_is_quick TRUE PARENT_SCOPE)
    endif()
  endif()
  target_precompile_headers(${target} REUSE_FROM hearth_precompiled_${kind})
endfunction()

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
  endif()
  hearth_precompile(hearth_${name} ${folder} "${ARG_WIDGETS}")
endfunction()

# The tests that can leave lines for the table of agreement (tests/support/agreement.h): those of core that link
# Hearth::tests_support. Each also leaves its report, so that the table knows whether all of them ran to their end.
function(hearth_agrees test name)
  set_property(GLOBAL APPEND PROPERTY HEARTH_AGREEING_TESTS ${test})
  set_property(
    TEST ${test}
    APPEND
    PROPERTY ENVIRONMENT "GTEST_OUTPUT=xml:${CMAKE_BINARY_DIR}/agreement/ran/${name}.xml")
  set_tests_properties(${test} PROPERTIES FIXTURES_REQUIRED agreement)
endfunction()

# hearth_test(core/quantity SOURCES decimal_test.cpp ... [LINKS ...] [WIDGETS] [PARTS n] [LABELS ...])
# Defines and registers the test binary of one folder, linked to that folder's library and what LINKS names.
# GUI tests are run offscreen; a test binary has TIMEOUT seconds on a quiet machine (60 unless said). A long one runs
# in PARTS processes: folder, folder/2 and so on, each with a part of its tests.
function(hearth_test folder)
  cmake_parse_arguments(ARG "WIDGETS" "TIMEOUT;PARTS" "SOURCES;LINKS;LABELS" ${ARGN})
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
    target_link_libraries(test_${name} PRIVATE Qt6::Test Qt6::Widgets)
  else()
    target_link_libraries(test_${name} PRIVATE GTest::gtest_main)
  endif()
  hearth_precompile(test_${name} ${folder} "${ARG_WIDGETS}")
  if(NOT ARG_TIMEOUT)
    set(ARG_TIMEOUT 60)
  endif()
  math(EXPR ARG_TIMEOUT "${ARG_TIMEOUT} * 3") # a machine that does other work too is no failure
  if(HEARTH_SANITIZE)
    math(EXPR ARG_TIMEOUT "${ARG_TIMEOUT} * 2") # the sanitizers make everything some times slower
  endif()
  if(NOT ARG_PARTS)
    set(ARG_PARTS 1)
  endif()
  foreach(part RANGE 1 ${ARG_PARTS})
    math(EXPR index "${part} - 1")
    set(test ${folder})
    if(part GREATER 1)
      set(test ${folder}/${part})
    endif()
    add_test(NAME ${test} COMMAND test_${name})
    set(environment QT_QPA_PLATFORM=offscreen)
    if(ARG_PARTS GREATER 1) # a whole test must not call itself a part: what it starts would believe it
      list(APPEND environment GTEST_TOTAL_SHARDS=${ARG_PARTS} GTEST_SHARD_INDEX=${index})
    endif()
    set_tests_properties(${test} PROPERTIES ENVIRONMENT "${environment}" TIMEOUT ${ARG_TIMEOUT} LABELS "${ARG_LABELS}")
  endforeach()
  if("Hearth::tests_support" IN_LIST ARG_LINKS AND folder MATCHES "^core/")
    hearth_agrees(${folder} ${name})
  endif()
  if("bench" IN_LIST ARG_LABELS)
    set_tests_properties(${folder} PROPERTIES RUN_SERIAL ON) # a figure measured beside other tests says nothing
  endif()
endfunction()
