// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls

ScrollColumn {
    id: page

    property string houseName: "House 2, north"

    signal padAsked

    Card {
        title: "Header"
        note: "Bank 1"
        Layout.fillWidth: true
        FieldRow {
            label: "Header length"
            value: "120 ft"
            hint: "From the inlet to the last outlet"
            note: "last visit"
            onClicked: page.padAsked()
            Layout.fillWidth: true
        }
        FieldRow {
            label: "Outlet spacing"
            hint: "Decides when each part of the pad gets its water"
            Layout.fillWidth: true
        }
        FieldRow {
            label: "Pad height"
            value: "3 km"
            errorText: "3 km was read; 1 to 12 ft is accepted."
            Layout.fillWidth: true
        }
        FieldRow {
            label: "Flow per foot of header"
            value: "0.75 gpm/ft"
            readOnly: true
            Layout.fillWidth: true
        }
    }
    Fold {
        title: "More about the header"
        summary: "1 of 4 entered"
        open: true
        Layout.fillWidth: true
        content: Component {
            FieldRow {
                label: "Far end above the pump end"
                value: "1 in"
                onClicked: page.padAsked()
                Layout.fillWidth: true
            }
        }
    }
    Card {
        title: "What if"
        Layout.fillWidth: true
        SliderRow {
            label: "Period"
            text: "5 min"
            from: 60
            to: 1200
            stepSize: 60
            value: 300
            ticks: [
                {
                    at: 600,
                    text: "found 10 min",
                    advised: false
                },
                {
                    at: 300,
                    text: "advised 5 min",
                    advised: true
                }
            ]
            Layout.fillWidth: true
        }
        SliderRow {
            label: "Base on-time"
            text: "85 s"
            from: 5
            to: 600
            stepSize: 5
            value: 85
            Layout.fillWidth: true
        }
    }
    Card {
        title: "Names"
        Layout.fillWidth: true
        TextFieldRow {
            label: "Name of the house"
            text: page.houseName
            onEdited: text => page.houseName = text
            Layout.fillWidth: true
        }
        TextFieldRow {
            label: "Grower"
            placeholder: "first and last name"
            hint: "Stands on the sheet"
            Layout.fillWidth: true
        }
        TextFieldRow {
            label: "Farm"
            text: "Farm 1"
            errorText: "There is a farm of this name already."
            Layout.fillWidth: true
        }
    }
}
