// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "cli/command.h"

namespace wetfront {

void add_store_copies(CLI::App& store, const Common& common, Work& chosen);
void add_store_history(CLI::App& store, const Common& common, Work& chosen);
void add_store_photos(CLI::App& store, const Common& common, Work& chosen);
void add_store_sheets(CLI::App& store, const Common& common, Work& chosen);
void add_store_table(CLI::App& store, const Common& common, Work& chosen);
void add_store_verify(CLI::App& store, const Common& common, Work& chosen);

}  // namespace wetfront
