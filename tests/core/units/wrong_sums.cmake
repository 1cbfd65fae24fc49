# SPDX-License-Identifier: Apache-2.0
# Sums that must not compile, each beside a twin that must: without the twin, a broken include path would pass for proof.
# The wrong one passes only if the compiler complains about the sum itself.

set(units_includes ${CMAKE_BINARY_DIR}/include/base ${CMAKE_BINARY_DIR}/include/units)
set(sum_command ${CMAKE_CXX_COMPILER} -std=c++20 -fsyntax-only)
foreach(directory ${units_includes})
  list(APPEND sum_command -I${directory})
endforeach()

function(wetfront_sum name wrong right)
  add_test(NAME wrong_sum.${name} COMMAND ${sum_command} "-DWETFRONT_SUM=${wrong}" ${CMAKE_CURRENT_SOURCE_DIR}/sum.cpp)
  set_tests_properties(wrong_sum.${name} PROPERTIES LABELS units_tests ENVIRONMENT LC_ALL=C PASS_REGULAR_EXPRESSION
    "error: (no match for|invalid operands|no matching function for call to 'conversion_factor)")
  add_test(NAME right_sum.${name} COMMAND ${sum_command} "-DWETFRONT_SUM=${right}" ${CMAKE_CURRENT_SOURCE_DIR}/sum.cpp)
  set_tests_properties(right_sum.${name} PROPERTIES LABELS units_tests)
endfunction()

wetfront_sum(two_temperatures "Temperature{} + Temperature{}" "Temperature{} + TemperatureDifference{}")
wetfront_sum(temperature_and_time "Temperature{} + Duration{}" "Duration{} + Duration{}")
wetfront_sum(difference_minus_temperature "TemperatureDifference{} - Temperature{}" "Temperature{} - Temperature{}")
wetfront_sum(two_absolute_pressures "AbsolutePressure{} + AbsolutePressure{}" "AbsolutePressure{} + PressureDifference{}")
wetfront_sum(pressure_and_temperature "AbsolutePressure{} - TemperatureDifference{}" "AbsolutePressure{} - PressureDifference{}")
wetfront_sum(length_and_area "Length{} + Area{}" "Length{} * Length{} + Area{}")
wetfront_sum(humidity_ratio_and_share "HumidityRatio{} + Fraction{}" "HumidityRatio{} + HumidityRatio{}")
wetfront_sum(temperature_from_difference "Temperature(TemperatureDifference{})" "Temperature(Temperature{})")
wetfront_sum(pressure_from_difference "AbsolutePressure(PressureDifference{})" "AbsolutePressure(AbsolutePressure{})")
wetfront_sum(humidity_ratio_from_share "HumidityRatio(Fraction{})" "HumidityRatio(HumidityRatio{})")
