// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme

// One house of the list: its banks in small, when it was last visited and what was found.
TouchTarget {
    id: line

    required property string houseId
    required property string house
    required property string farm
    required property string visits
    required property bool open
    required property string worst
    required property string lastFound
    required property var banks

    text: Sentence.fill(qsTr("%1, %2"), [house, farm])
    Accessible.role: Accessible.Button
    Accessible.description: visits

    background: Rectangle {
        color: line.down ? Theme.waterTint : Theme.surface
        radius: Theme.radius
        border.width: Theme.border
        border.color: Theme.line
    }
    contentItem: RowLayout {
        spacing: Theme.space
        Flow {
            spacing: Theme.gap
            Layout.preferredWidth: Theme.thumbnailWidth
            Repeater {
                model: line.banks
                delegate: BankThumbnail {
                    required property var modelData
                    width: line.banks.length > 1 ? (Theme.thumbnailWidth - Theme.gap) / 2 : Theme.thumbnailWidth
                    height: line.banks.length > 1 ? Theme.thumbnailHeight / 2 : Theme.thumbnailHeight
                    pumpOnLeft: modelData.pumpOnLeft
                    aspect: modelData.aspect
                }
            }
        }
        ColumnLayout {
            spacing: Theme.spaceSmall
            Layout.fillWidth: true
            PlainWords {
                text: line.house
                kind: "title"
                Layout.fillWidth: true
            }
            PlainWords {
                text: Sentence.fill(qsTr("%1 · %2"), [line.farm, line.visits])
                soft: true
                Layout.fillWidth: true
            }
            RowLayout {
                visible: line.lastFound.length > 0
                spacing: Theme.gap
                SeverityMark {
                    visible: line.worst.length > 0
                    severity: line.worst
                    size: Theme.pictogramSmall
                }
                PlainWords {
                    text: line.lastFound
                    maximumLineCount: 2
                    elide: Text.ElideRight
                    Layout.fillWidth: true
                }
            }
        }
        PlainWords {
            visible: line.open
            text: qsTr("visit open")
            color: Theme.warningInk
            font.bold: true
        }
        Pictogram {
            name: "forward"
            colour: Theme.water
        }
    }
}
