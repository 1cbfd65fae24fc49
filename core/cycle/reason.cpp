// SPDX-License-Identifier: Apache-2.0
#include "cycle/reason.h"

namespace wetfront {

Message label_of(Origin origin) {
    switch (origin) {
        case Origin::measured:
            return WF_TEXT("measured");
        case Origin::entered:
            return WF_TEXT("entered");
        case Origin::assumed:
            return WF_TEXT("assumed, can be changed");
        case Origin::published:
            return WF_TEXT("published");
        case Origin::derived:
            return WF_TEXT("worked out");
    }
    return {};
}

}  // namespace wetfront
