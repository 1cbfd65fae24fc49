# SPDX-License-Identifier: Apache-2.0
# The two shapes of target in this project: a folder that is a library, and a folder of tests.

add_library(wetfront_warnings INTERFACE)
target_compile_options(wetfront_warnings INTERFACE -Wall -Wextra -Wpedantic -Wconversion -Werror)
# GCC 12 sees overlapping copies in "text" + std::string at -O2 and above where there are none (its bug 105651).
target_compile_options(wetfront_warnings INTERFACE $<$<CXX_COMPILER_ID:GNU>:-Wno-restrict>)

# wetfront_library(<folder> [LINKS <target>...])
# Every .cpp of the calling folder becomes the static library wetfront_<folder>. Its headers are reached as
# "<folder>/<header>.h", and only by targets that link it: each library owns one include directory that holds
# nothing but a link to its folder, so a folder missing from a link line cannot be included.
function(wetfront_library folder)
  cmake_parse_arguments(ARG "" "" "LINKS" ${ARGN})
  file(GLOB sources CONFIGURE_DEPENDS ${CMAKE_CURRENT_SOURCE_DIR}/*.cpp)
  add_library(wetfront_${folder} STATIC ${sources})
  set(include_dir ${CMAKE_BINARY_DIR}/include/${folder})
  file(MAKE_DIRECTORY ${include_dir})
  file(CREATE_LINK ${CMAKE_CURRENT_SOURCE_DIR} ${include_dir}/${folder} SYMBOLIC)
  target_include_directories(wetfront_${folder} PUBLIC ${include_dir})
  target_link_libraries(wetfront_${folder} PUBLIC ${ARG_LINKS} PRIVATE wetfront_warnings)
endfunction()

# wetfront_tests(<name> [SCREEN] [APART] [FIXTURES <fixture>] [LINKS <target>...])
# Every *_test.cpp of the calling folder becomes part of the GoogleTest program <name>, each test known to CTest.
# Six files at a time are compiled as one, which halves the time to build them all: names in them differ, or stand in a header
# of the folder. APART: each file for itself, where every file has a small world of its own.
# SCREEN: the tests open windows; CTest runs only one such test at a time, because only one window has the keyboard.
# FIXTURES: what CTest runs before (tests/outside): outside_psychrolib, outside_epanet, or outside for both. One name, because
# gtest_discover_tests() drops what follows the first of a list.
function(wetfront_tests name)
  cmake_parse_arguments(ARG "SCREEN;APART" "FIXTURES" "LINKS" ${ARGN})
  if(ARG_UNPARSED_ARGUMENTS)
    message(FATAL_ERROR "wetfront_tests(${name}): unknown: ${ARG_UNPARSED_ARGUMENTS}")
  endif()
  file(GLOB sources CONFIGURE_DEPENDS ${CMAKE_CURRENT_SOURCE_DIR}/*_test.cpp)
  add_executable(${name} ${sources})
  if(ARG_APART)
    set_target_properties(${name} PROPERTIES UNITY_BUILD OFF)
  else()
    set_target_properties(${name} PROPERTIES UNITY_BUILD ON UNITY_BUILD_BATCH_SIZE 6)
  endif()
  # A main in LINKS goes before GoogleTest's.
  target_link_libraries(${name} PRIVATE ${ARG_LINKS} wetfront_test_support wetfront_warnings GTest::gmock_main)
  # Tests check what the optimised libraries do; optimising the checks themselves would double the time to build them.
  # At -O1 GCC 12 takes what an empty optional does not hold for uninitialised.
  target_compile_options(${name} PRIVATE $<$<CONFIG:Release>:-O1>
    $<$<AND:$<CONFIG:Release>,$<CXX_COMPILER_ID:GNU>>:-Wno-maybe-uninitialized>)
  # The same under the fuzz preset, where it is half of the time to build: sanitizers yes, optimising and coverage no.
  if(WETFRONT_FUZZ)
    target_compile_options(${name} PRIVATE -O0 -fno-sanitize=fuzzer-no-link)
  endif()
  set(needs)
  if(ARG_SCREEN)
    list(APPEND needs RESOURCE_LOCK screen)
  endif()
  if(ARG_FIXTURES)
    list(APPEND needs FIXTURES_REQUIRED ${ARG_FIXTURES})
  endif()
  gtest_discover_tests(${name} NO_PRETTY_VALUES PROPERTIES LABELS ${name} ${needs} DISCOVERY_TIMEOUT 60)
endfunction()
