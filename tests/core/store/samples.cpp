// SPDX-License-Identifier: Apache-2.0
#include "samples.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cstdlib>
#include <fstream>
#include <sstream>

namespace wetfront::test {

Farm sample_farm() {
    Farm farm;
    farm.id = Id{"farm-1"};
    farm.name = "Quarzell Farm";
    farm.elevation = entered<Length>("320 ft");
    return farm;
}

House sample_house() {
    House house;
    house.id = Id{"house-1"};
    house.farm = Id{"farm-1"};
    house.name = "House 1";
    for (const auto& [id, name] : {std::pair{"pump-1", "North"}, {"pump-2", "South"}}) {
        auto& pump = house.pumps.emplace_back();
        pump.id = Id{id};
        pump.name = name;
    }
    for (const auto& [id, pump] :
         {std::pair{"bank-1", "pump-1"}, {"bank-2", "pump-1"}, {"bank-3", "pump-2"}}) {
        PadBank bank;
        bank.id = Id{id};
        bank.name = id;
        bank.pump = Id{pump};
        bank.length = entered<Length>("18 m");
        house.banks.push_back(bank);
    }
    return house;
}

Visit sample_visit(const std::string& id) {
    Visit visit;
    visit.id = Id{id};
    visit.house = Id{"house-1"};
    visit.started = {1'782'900'000'000, -300};
    visit.persons = {{.name = "Ottoline Brask", .role = "technician"}};
    return visit;
}

Signature sample_signature() {
    return {{.name = "Ottoline Brask", .role = "technician"}, {1'782'910'000'000, -300}};
}

// Its hash: printf '\\377\\330\\377\\340 not to be drawn \\0\\377\\331' | sha256sum
Photo sample_photo() {
    Photo photo;
    photo.sha256 = "6b6c2c5d61701b9c5abe79bd7740d8117bfcc7a137860a836d8ad7ed2c173512";
    photo.bank = Id{"bank-1"};
    photo.note = "scale at the far end";
    photo.added = {1'782'910'000'000, -300};
    return photo;
}

Mark sample_mark(const std::string& id, MarkKind kind, std::int64_t second) {
    Mark mark;
    mark.id = Id{id};
    mark.kind = kind;
    mark.pump = Id{"pump-1"};
    if (kind != MarkKind::pump_start && kind != MarkKind::pump_stop) {
        mark.bank = Id{"bank-1"};
    }
    mark.at = {"boot-a", 1'000'000'000 + second * 1'000'000'000};
    mark.wall = {1'782'900'000'000 + second * 1000, -300};
    return mark;
}

StoreFolder::StoreFolder() {
    auto name = (std::filesystem::temp_directory_path() / "store-test-XXXXXX").string();
    if (::mkdtemp(name.data()) == nullptr) {
        throw std::runtime_error{"no temporary folder " + name};
    }
    path_ = name;
}

StoreFolder::~StoreFolder() {
    std::error_code ignored;
    std::filesystem::permissions(path_, std::filesystem::perms::owner_all, ignored);
    std::filesystem::remove_all(path_, ignored);
}

Store StoreTest::open_with_visit() {
    auto store = open();
    succeed(store.save(sample_farm()));
    succeed(store.save(sample_house()));
    succeed(store.save(sample_visit()));
    return store;
}

std::string bytes_of(const std::filesystem::path& file) {
    std::ostringstream bytes;
    bytes << std::ifstream{file, std::ios::binary}.rdbuf();
    return bytes.str();
}

std::string schema_text(const std::filesystem::path& file) {
    SQLite::Database db{file};
    SQLite::Statement rows{db, "SELECT sql FROM sqlite_schema WHERE sql IS NOT NULL ORDER BY type, name"};
    std::string text = "-- SPDX-License-Identifier: Apache-2.0\n";
    while (rows.executeStep()) {
        text += rows.getColumn(0).getString() + ";\n";
    }
    return text;
}

unsigned mode_of(const std::filesystem::path& path) {
    struct stat about {};
    EXPECT_EQ(::stat(path.c_str(), &about), 0) << path;
    return about.st_mode & 0777U;
}

}  // namespace wetfront::test
