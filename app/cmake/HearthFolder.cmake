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
            -Wno-psabi)
if(HEARTH_SANITIZE)
  target_compile_options(hearth_settings INTERFACE -fsanitize=address,undefined -fno-sanitize-recover=all
                                                   -fno-omit-frame-pointer)
  target_link_options(hearth_settings INTERFACE -fsanitize=address,undefined)
endif()

# Headers are what compiling costs here: each target of some size reads the common ones once. A small one would pay more
# for the precompiled header than it saves.
function(hearth_precompile target folder widgets sources)
  list(LENGTH sources count)
  if(widgets)
    set(headers "${CMAKE_SOURCE_DIR}/ui/precompiled.h")
    if(folder MATCHES "^ui/(shell|premises|visit|records|rulebook|firm)$" OR folder STREQUAL "app")
      list(APPEND headers "${CMAKE_SOURCE_DIR}/core/store/store.h")
    endif()
  elseif(count GREATER 2)
    set(headers "${CMAKE_SOURCE_DIR}/core/precompiled.h")
  endif()
  if(target MATCHES "^test_" AND headers)
    list(APPEND headers <gmock/gmock.h>)
  endif()
  if(headers)
    target_precompile_headers(${target} PRIVATE ${headers})
  endif()
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
  hearth_precompile(hearth_${name} ${folder} "${ARG_WIDGETS}" "${ARG_SOURCES}")
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
    target_link_libraries(test_${name} PRIVATE Qt6::Test Qt6::Widgets)
  else()
    target_link_libraries(test_${name} PRIVATE GTest::gtest_main)
  endif()
  hearth_precompile(test_${name} ${folder} "${ARG_WIDGETS}" "${ARG_SOURCES}")
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
